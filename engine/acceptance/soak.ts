/** `npm run soak`: the press test's tables at full length. */
import { isMet, missedBands } from './press-cells.ts'
import { realSheet } from './press-forks.ts'
import { cellTable, countTable, holdTable, sheetTable } from './press-tables.ts'

export interface Soak {
  /** The page. */
  lines: string[]
  /** What was missed, one sentence each. */
  missed: string[]
}

/**
 * @param forks    a cell
 * @param commit   the checkout it ran on
 * @param say      told of each step
 */
export function soak(forks: number, commit: string, say: (line: string) => void): Soak {
  const counted = countTable(forks)
  const cells = cellTable(counted)
  for (const line of cells) say(line)
  const sheets = sheetTable(forks)
  for (const line of sheets) say(line)
  const missed = counted.flatMap(({ cell, counts }) => [
    ...cell.wanted.filter((wanted) => !isMet(counts, wanted)).map(({ what }) => `${cell.truth}: ${what}`),
    ...missedBands(cell, counts).map((band) => `${cell.truth}: band of ${band}`),
  ])
  const { positive, negative, lower, port, strokeZero } = realSheet
  const lines = [
    '# Press tests on drawn forks',
    '',
    'Written by `npm run soak`; nothing here is typed in. Every fork is drawn, none was measured: what is known is what was',
    'done to it, so that an answer can be told right from wrong.',
    '',
    `- Commit ${commit}`,
    `- ${forks.toLocaleString('en')} forks a cell; fork number i of every cell is drawn with seed i, 1 … ${forks}`,
    '- The 35 mm demonstration fork U01 (invented dimensions), twelve stops from 10 to 127 mm; 4 N and 0.7 mm of doubt in',
    '  every reading, 2 % of the gauge once a session, friction 10–25 N unless said',
    `- ${missed.length === 0 ? 'Every proportion is met' : `Missed: ${missed.join('; ')}`}`,
    '',
    '## Is the answer right',
    '',
    'Right: the fault is named alone, or the fork is called as its sheet says where it is. Cannot tell: the fault stands among',
    'those named together. Everything else is wrong. Bands: how many 90 % intervals hold the truth, 840–960 of a thousand.',
    '',
    ...cells,
    '',
    '## What real sheets allow',
    '',
    `Sheets off by up to ±${100 * positive} % of the positive chamber, ±${100 * negative} % of the negative, ±${100 * lower} % of the lower legs,`,
    `±${1000 * port} mm of the port and ±${1000 * strokeZero} mm of the stroke's zero, each evenly (estimates, no source). The smallest fault that is`,
    'found in 9 of 10 forks, and how often a sound fork is called so: a fault named smaller than these may be the sheet’s.',
    '',
    ...sheets,
    '',
    'What helps is to calibrate: one good press of a fork known to be sound, kept on its sheet as measured here.',
    '',
    '## Why a stop is held',
    '',
    'Friction that is none, on the same fork and stops at its pressure: the gas warmed by a step down and cooled by a step',
    'back is off its slow pressure by P·V^1.4, and comes to rest with a time constant of 4–10 s (estimate, no source).',
    '',
    ...holdTable(),
    '',
  ]
  return { lines, missed }
}
