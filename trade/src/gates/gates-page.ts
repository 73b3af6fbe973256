/** The page of the gates, `docs/gates.md`: what each says, and what the search finds with all and without each. */
import type { GateId } from '../journal/entry.ts'
import { sayMessage } from '../words/words.ts'
import { isWaivable, rules } from './rules.ts'

function wayRound(id: GateId): string {
  const rule = rules.find((one) => one.id === id)
  if (rule?.noWayRound) return 'none'
  return isWaivable(id) ? 'name and reason' : 'said so by who ticks'
}

/** Columns as wide as their widest cell, as the formatter of the documents wants them. */
function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = heads.map((head, at) => Math.max(head.length, ...rows.map((cells) => cells[at]?.length ?? 0)))
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join(' | ')} |`
  return [line(heads), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)].join('\n')
}

/**
 * The page, from the rows of a search.
 *
 * @param kinds  states seen on each kind and service with all gates, none of them forbidden
 * @param gates  without that gate alone: states seen until the shortest forbidden sequence, and the sequence
 */
export function gatesPage(
  kinds: readonly { name: string; states: number }[],
  gates: readonly { id: GateId; states: number; sequence: readonly string[] }[],
): string {
  return `# Gates

A gate is a rule over what is true of the unit now. The rules are common practice of careful workshops, no source. This page
is written by \`trade/src/gates/gates.test.ts\`, which searches every state that can be reached, breadth first, each tick also in
its careless form, and holds what happened against a yardstick that knows neither facts nor gates nor the procedures' data: the
rules and what a hand does in each step are written there once more, by hand.

## With every gate

${table(
  ['kind and service', 'states', 'forbidden'],
  kinds.map(({ name, states }) => [name, String(states), 'none']),
)}

## Without one

The shortest forbidden sequence with that gate alone left out, and how many states were seen until it was found. R6, R18 and
R19 are shown on small procedures of the test: the procedures of dampers and gas shocks are not written yet, and no service can be
planned on a shock. Lower legs and air spring are searched on every kind of fork that has them.

${table(
  ['gate', 'what it is', 'way round', 'states', 'then this goes through'],
  gates.map(({ id, states, sequence }) => [
    id,
    sayMessage({ key: `gate.${id}` as never, params: {} }), // every gate has its name in the catalogue, by a test
    wayRound(id),
    String(states),
    sequence.join(', '),
  ]),
)}
`
}

/** The rows of a page's tables. */
export const rowsOf = (page: string): readonly string[] => page.split('\n').filter((line) => line.startsWith('| '))
