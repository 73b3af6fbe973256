import { Refusal } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { demoUnits } from '../demo/units.ts'
import { sheetOfDemo } from '../journal/written-job.ts'
import { sheetPlaces } from '../sheets/sheet-places.ts'
import { sayMessage } from '../words/words.ts'
import { judgeMeasured } from './bench-limits.ts'
import { judgeDrained, judgeOilLook } from './drained-oil.ts'
import { judge, worst, zonesOf } from './judge.ts'
import { usualBeside, usualRange, usualWarning } from './usual.ts'

const ml = 1e-6
const said = (value: ReturnType<typeof usualWarning>) => value && sayMessage(value)

describe('judging', () => {
  // Common practice, no source: bushing clearance under 0.12 mm pass, to 0.20 watch, over fail.
  it.each([
    [0.07, 'pass'],
    [0.12, 'pass'],
    [0.13, 'watch'],
    [0.2, 'watch'],
    [0.24, 'fail'],
    [0.31, 'fail'],
  ])('a clearance of %d mm is %s', (mm, verdict) => {
    expect(judgeMeasured('clearance', mm / 1000, sheetOfDemo('U06')).verdict).toBe(verdict)
  })

  it('can’t tell where the instrument’s doubt reaches over a limit', () => {
    // Common practice, no source: a 10-minute leak over 1 % is hard to see with a gauge that reads to 1 psi.
    expect(judgeMeasured('leak-10-min', 0.004, null, 0.011).verdict).toBe('cannot-tell')
    expect(judgeMeasured('leak-10-min', 0.004, null, 0.002).verdict).toBe('pass')
    expect(judgeMeasured('leak-10-min', 0.05, null, 0.011).verdict).toBe('fail')
  })

  it('judges a return time from both sides', () => {
    // Common practice, no source: 0.14–0.24 s pass, 0.10–0.14 and 0.24–0.40 watch.
    const verdicts = [0.08, 0.12, 0.2, 0.29, 0.5].map((time) => judgeMeasured('return-time', time, null).verdict)
    expect(verdicts).toEqual(['fail', 'watch', 'pass', 'watch', 'fail'])
  })

  it('says cannot tell where there is no limit, and names the limit’s source', () => {
    expect(judgeMeasured('rub-stripe', 0.06, null)).toMatchObject({ verdict: 'cannot-tell', source: null })
    expect(judgeMeasured('friction', 52, null).source?.kind).toBe('common-practice')
    expect(judgeMeasured('friction', 52, sheetOfDemo('U06')).source?.kind).toBe('makers-sheet')
  })

  it('refuses what is no number', () => {
    expect(() => judge(Number.NaN, zonesOf({ watch: 1, fail: 2 }))).toThrow(Refusal)
    expect(() => judge(1, zonesOf({ watch: 1, fail: 2 }), -1)).toThrow(Refusal)
  })

  it('takes the worst of several', () => {
    expect(worst(['pass', 'watch', 'fail'])).toBe('fail')
    expect(worst(['pass', 'cannot-tell'])).toBe('cannot-tell')
    expect(worst(['cannot-tell', 'watch'])).toBe('watch')
    expect(worst([])).toBe('pass')
  })
})

describe('drained oil', () => {
  // Common practice, no source; volumes are those of the demo jobs J02, J03, J07, J10.
  it.each([
    [8, 10, 'in-interval'],
    [7, 10, 'due'],
    [1.5, 15, 'far-too-late'],
    [3, 15, 'late'],
    [7.4, 15, 'late'],
    [12.5, 15, 'in-interval'],
    [22.5, 15, 'in-interval'],
    [62, 15, 'over'],
    [12, 20, 'due'],
    [5, 10, 'due'],
  ])('%d of %d ml is %s', (drained, filled, says) => {
    expect(judgeDrained(drained * ml, filled * ml).says.key).toBe(`drained.${says}`)
  })

  it('is told by its look too, the worst first', () => {
    // Common practice, no source: milky is water; grey or black is late, glitter is wear.
    const seen = (signs: readonly string[]) =>
      judgeOilLook((sign) => signs.includes(sign)).map(({ verdict }) => verdict)
    expect(seen(['S27', 'S29'])).toEqual(['fail', 'watch'])
    expect(seen(['S28', 'S16'])).toEqual([])
  })

  it('refuses impossible volumes', () => {
    expect(() => judgeDrained(-1 * ml, 10 * ml)).toThrow(Refusal)
    expect(() => judgeDrained(1 * ml, 0)).toThrow(Refusal)
  })
})

describe('usual ranges', () => {
  const usual = (field: string, sheet: Parameters<typeof usualRange>[1], leg?: Parameters<typeof usualRange>[2]) => {
    const range = usualRange(field, sheet, leg)
    if (!range) throw new Error(`no usual range of ${field}`)
    return range
  }

  it('warn of a slip and never of what is usual', () => {
    const range = usual('bathOil', sheetOfDemo('U01'))
    expect(said(usualWarning(55 * ml, range))).toBe('You typed 55 ml. Usual is 5 to 20. Read the sheet once more.')
    expect(usualWarning(5 * ml, range)).toBeNull()
    expect(usualWarning(20 * ml, range)).toBeNull()
    expect(sayMessage(usualBeside(range))).toBe('≈ usual is 5 to 20 ml')
  })

  const fork = sheetOfDemo('U01')
  const legs = fork.legs
  // Common practice, no source: written here from the trade's notes.
  it.each([
    ['bathOil', fork, null, '5 to 20 ml'],
    ['bathOil', sheetOfDemo('U08'), null, '10 to 250 ml'],
    ['bathOilViscosity', fork, null, '30 to 75 mm²/s'],
    ['chamberOil', fork, null, '0 to 5 ml'],
    ['footTorque', fork, legs?.left ?? null, '5 to 8 N·m'],
    ['footTorque', fork, legs?.right ?? null, '5 to 10 N·m'],
    ['footTorque', fork, null, '5 to 10 N·m'],
    ['capTorque', fork, null, '20 to 30 N·m'],
    ['capTorque', sheetOfDemo('U08'), null, '15 to 25 N·m'],
    ['stanchion', fork, null, '28 to 40 mm'],
    ['stroke', fork, null, '80 to 203 mm'],
    ['stroke', sheetOfDemo('U10'), null, '38 to 75 mm'],
    ['freeLength', fork, null, '80 to 240 mm'],
    ['maxPressure', fork, null, '100 to 350 psi'],
  ] as const)('of %s', (field, sheet, leg, text) => {
    expect(sayMessage(usualBeside(usual(field, sheet, leg)))).toBe(`≈ usual is ${text}`)
  })

  it.each(demoUnits.map(({ key }) => key))('every value of the demo sheet of %s is usual', (key) => {
    const odd = sheetPlaces(sheetOfDemo(key)).filter(
      ({ held, usual: range }) => range && typeof held?.value === 'number' && usualWarning(held.value, range),
    )
    expect(odd.map(({ path }) => path)).toEqual([])
  })

  it('say nothing where practice has no range', () => {
    expect(usualRange('bore', fork)).toBeNull()
    expect(usualRange('toString', fork)).toBeNull()
  })
})
