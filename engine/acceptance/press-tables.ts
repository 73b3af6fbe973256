/** Both tables of the press test as Markdown, for the tests' output and for docs/soak.md. */
import { holdFriction } from '@legwork/engine'
import { type Cell, type Counts, countCell, table } from './press-cells.ts'
import { stops, testFork, testPressure } from './press-forks.ts'
import { found, type Search, searches, smallest } from './press-sheets.ts'

export interface Counted {
  readonly cell: Cell
  readonly counts: Counts
}

export function pressName({ presses }: Pick<Cell, 'presses'>): string {
  return presses.length === 1 ? 'one press' : 'full and half pressure'
}

export function countTable(forks: number): Counted[] {
  return table.map((cell) => ({ cell, counts: countCell(cell, forks) }))
}

function wantedText({ wanted }: Cell): string {
  return wanted
    .map(({ what, least, most }) => (least === undefined ? `${what} ≤ ${most}` : `${what} ≥ ${least}`))
    .join(', ')
}

const row = (fields: readonly (string | number)[]) => `| ${fields.join(' | ')} |`

function markdown(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string[] {
  return [row(head), row(head.map(() => '---')), ...rows.map(row)]
}

export function cellTable(counted: readonly Counted[]): string[] {
  const head = ['truth', 'pressed', 'right', 'cannot tell', 'wrong', 'as sheet', 'friction', 'bands', 'per thousand']
  return markdown(
    head,
    counted.map(({ cell, counts }) => [
      cell.truth,
      pressName(cell),
      counts.right,
      counts['cannot-tell'],
      counts.wrong,
      counts['as-sheet'],
      `${counts['friction within']} within ${cell.frictionWithin} N`,
      cell.size === null
        ? `friction ${counts.frictionCovered}`
        : `friction ${counts.frictionCovered}, size ${counts.sizeCovered}`,
      wantedText(cell),
    ]),
  )
}

/** What holding each stop does to the friction read. */
export function holdTable(): string[] {
  const rows = [2, 5, 10, 20, 30].map((hold) => {
    const { friction } = holdFriction(testFork, { pressure: testPressure, strokes: stops, hold })
    return [`${hold} s`, ...friction.map((newton) => `${newton.toFixed(1)} N`)]
  })
  return markdown(['held', 'gas that cools in 4 s', 'gas that cools in 10 s'], rows)
}

/** The second table: what real sheets allow. */
export function sheetTable(forks: number): string[] {
  const shown = (search: Search, steps: number | null) => (steps === null ? 'none up to 60' : search.shown(steps))
  const rows = searches.map((search) => [
    search.fault,
    shown(search, smallest(search, [1], 'among', forks)),
    shown(search, smallest(search, [1, 0.5], 'alone', forks)),
  ])
  const sound = ([1, 0.5] as const).map((_, more) => {
    const { alone } = found({ spring: testFork }, 'as-sheet', more === 0 ? [1] : [1, 0.5], forks)
    return `${Math.round(alone * 1000)} of 1,000`
  })
  return markdown(
    ['found in 9 of 10', 'one press, at least among what stands together', 'full and half pressure, named alone'],
    [...rows, ['a sound fork, called as its sheet says', ...sound]],
  )
}
