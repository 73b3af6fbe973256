import { Refusal } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { sheetOfDemo } from '../journal/written-job.ts'
import { sayMessage } from '../words/words.ts'
import { judgeMeasured } from './bench-limits.ts'
import { judgeDrained } from './drained-oil.ts'
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
    [1.5, 15, 'late'],
    [62, 15, 'over'],
    [12, 20, 'due'],
    [5, 10, 'due'],
  ])('%d of %d ml is %s', (drained, filled, says) => {
    expect(judgeDrained(drained * ml, filled * ml).says.key).toBe(`drained.${says}`)
  })

  it('refuses impossible volumes', () => {
    expect(() => judgeDrained(-1 * ml, 10 * ml)).toThrow(Refusal)
    expect(() => judgeDrained(1 * ml, 0)).toThrow(Refusal)
  })
})

describe('usual ranges', () => {
  it('warn of a slip and never of what is usual', () => {
    const range = usualRange('bathOil', sheetOfDemo('U01'))
    expect(said(usualWarning(55 * ml, range))).toBe('You typed 55 ml. Usual is 5 to 20. Read the sheet once more.')
    expect(usualWarning(5 * ml, range)).toBeNull()
    expect(usualWarning(20 * ml, range)).toBeNull()
    expect(sayMessage(usualBeside(range))).toBe('≈ usual is 5 to 20 ml')
  })

  it('hang on damper and fixing', () => {
    expect(usualWarning(100 * ml, usualRange('bathOil', sheetOfDemo('U08')))).toBeNull()
    const { legs } = sheetOfDemo('U01')
    expect(said(usualWarning(9, usualRange('footTorque', null, legs?.left ?? null)))).toContain('Usual is 5 to 8.')
    expect(usualWarning(9, usualRange('footTorque', null, legs?.right ?? null))).toBeNull()
  })
})
