/**
 * Press tests on drawn forks whose truth is known. LEGWORK_PRESS_FORKS forks a cell: 30 in `npm test`, 200 in `.ci/run`,
 * 1,000 in `npm run soak`. The proportions were set beforehand, by simulation of the test fork; no published source.
 */
import { sheetDoubt } from '@legwork/engine'
import { afterAll, describe, expect, it } from 'vitest'
import { countCell, isMet, missedBands, table, truths } from './press-cells.ts'
import { found, soundLooksLike } from './press-sheets.ts'
import { type Counted, cellTable, pressName, sheetTable } from './press-tables.ts'

const forks = Number(process.env.LEGWORK_PRESS_FORKS ?? 30)
const isLong = forks >= 200
const counted: Counted[] = []
const twice = [1, 0.5]

describe(`press tests on ${forks} forks a cell`, () => {
  it.each(table.map((cell) => [`${cell.truth}, ${pressName(cell)}`, cell] as const))(
    '%s',
    { timeout: 1_200_000 },
    (_, cell) => {
      const counts = countCell(cell, forks)
      counted.push({ cell, counts })
      for (const wanted of cell.wanted)
        expect(isMet(counts, wanted), `${wanted.what}: ${counts[wanted.what]}`).toBe(true)
      if (isLong) expect(missedBands(cell, counts)).toEqual([])
    },
  )

  // A few forks scatter too much cell by cell; all of them together do not.
  it('90 % intervals hold the truth about so often', () => {
    const bands = counted.flatMap(({ cell, counts }) => [
      counts.frictionCovered,
      ...(cell.size === null ? [] : [counts.sizeCovered]),
    ])
    expect(bands.length).toBe(table.length + 8)
    const share = bands.reduce((sum, covered) => sum + covered, 0) / (bands.length * forks)
    expect(share).toBeGreaterThanOrEqual(0.84)
    expect(share).toBeLessThanOrEqual(0.96)
  })

  afterAll(() => {
    process.stdout.write(`\n${cellTable(counted).join('\n')}\n\n`)
  })
})

// V+ ±1.5 %, V_n ±4 %, lower legs ±3 %, port ±0.3 mm, stroke's zero ±0.5 mm, evenly: what a maker's sheet may be off.
describe(`real sheets, ${forks} forks`, () => {
  it.each([
    ['14 ml of oil in the chamber', truths.oil(14e-6), 'volume-less'],
    ['24 ml more in each bath', truths.bath(24e-6), 'bath-over'],
    ['8 % of the negative pressure lost', truths.negative(0.92), 'negative-off'],
  ] as const)('full and half pressure name %s in 9 of 10', { timeout: 600_000 }, (_, fork, right) => {
    expect(found(fork, right, twice, forks).alone).toBeGreaterThanOrEqual(0.9)
  })

  // These sizes are told beside every press test: a fault named smaller than them may be the sheet's.
  it('a sound fork looks like no more than the sheet is off', { timeout: 600_000 }, () => {
    for (const pressures of [[1], twice]) {
      const largest = soundLooksLike(pressures, forks)
      expect(largest.map(({ name }) => name)).toEqual(['volume-less', 'bath-over', 'negative-off'])
      const [oil = Number.NaN, bath = Number.NaN, negative = Number.NaN] = largest.map(({ size }) => size)
      expect(oil).toBeLessThanOrEqual(sheetDoubt.chamberOil)
      expect(bath).toBeLessThanOrEqual(sheetDoubt.bathOil)
      expect(negative).toBeLessThanOrEqual(sheetDoubt.negative)
    }
  })

  if (!isLong) return
  it('the smallest found in 9 of 10', { timeout: 1_800_000 }, () => {
    const lines = sheetTable(Math.min(forks, 200))
    process.stdout.write(`\n${lines.join('\n')}\n\n`)
    expect(lines.join('\n')).not.toContain('none up to')
  })
})
