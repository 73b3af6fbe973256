import type { Timing } from './rounds.ts'

export interface Row {
  readonly what: string
  readonly ours: Timing
  readonly peer?: { readonly name: string; readonly timing: Timing }
  /** [µs] */
  readonly target?: number
}

/** A time in the unit it reads best in. */
function time(microseconds: number): string {
  const [value, unit] =
    microseconds >= 1e6
      ? [microseconds / 1e6, 's']
      : microseconds >= 1000
        ? [microseconds / 1000, 'ms']
        : [microseconds, 'µs']
  return `${Number(value.toPrecision(3))} ${unit}`
}

const spread = ({ median, fastest, slowest }: Timing) => `${time(median)} (${time(fastest)} – ${time(slowest)})`

/** Which way it fell, in words. */
function ratio(ours: number, theirs: number): string {
  const faster = theirs >= ours
  const times = faster ? theirs / ours : ours / theirs
  if (times < 1.05) return 'alike, within 5 %'
  return `ours ${Number(times.toPrecision(2))} × ${faster ? 'faster' : 'slower'}`
}

function target(ours: number, wanted: number | undefined): string {
  if (wanted === undefined) return ''
  return `≤ ${time(wanted)}: ${ours <= wanted ? 'met' : 'missed'}`
}

export function table(cells: readonly string[][]): string[] {
  const widths = (cells[0] ?? []).map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)))
  const line = (row: readonly string[]) =>
    `| ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(' | ')} |`
  const [head = [], ...body] = cells
  return [line(head), line(widths.map((width) => '-'.repeat(width))), ...body.map(line)]
}

/** The figures as a table. */
export function figures(rows: readonly Row[]): string[] {
  return table([
    ['what', 'ours', 'peer', 'ratio', 'target'],
    ...rows.map(({ what, ours, peer, target: wanted }) => [
      what,
      spread(ours),
      peer ? `${peer.name}: ${spread(peer.timing)}` : '',
      peer ? ratio(ours.median, peer.timing.median) : '',
      target(ours.median, wanted),
    ]),
  ])
}

/** How the time grows from the smallest batch: 10 and 100 where each sag costs the same. */
export function growth(programs: readonly { name: string; timings: readonly Timing[] }[], counts: readonly number[]) {
  return table([
    ['program', ...counts.map((count) => `${count.toLocaleString('en-GB')} sags, each`), '×10', '×100'],
    ...programs.map(({ name, timings }) => {
      const medians = timings.map(({ median }) => median)
      const first = medians[0] ?? Number.NaN
      const grown = medians.slice(1).map((median) => `${Number((median / first).toPrecision(3))} ×`)
      return [name, ...medians.map((median, index) => time(median / (counts[index] ?? Number.NaN))), ...grown]
    }),
  ])
}
