import { describe, expect, it } from 'vitest'
import { ageReplacement } from './age-replacement.ts'
import { kaplanMeier } from './kaplan-meier.ts'
import { life } from './life.ts'
import type { Life } from './lives.ts'
import { failedBy, weibull } from './weibull.ts'

/** `9 13 13+`: a plus ran on. */
const read = (text: string): Life[] =>
  text.split(' ').map((one) => ({ hours: Number.parseFloat(one), failed: !one.endsWith('+') }))
/** The nth row of a curve. */
const row = (lives: readonly Life[], hours: number) => kaplanMeier(lives).find((one) => one.hours === hours)

describe('NIST/SEMATECH e-Handbook 8.4.1.3: ten failures, ten censored at 500 h', () => {
  const lives = read(`54 187 216 240 244 335 361 373 375 386${' 500+'.repeat(10)}`)
  it('Weibull 606.5280 and 1.7208, log likelihood −75.135 (printed)', () => {
    const seen = life({ lives })
    expect(seen.scale).toBeCloseTo(606.528, 3)
    expect(seen.shape).toBeCloseTo(1.7208, 4)
    expect(seen.logLikelihood).toBeCloseTo(-75.135, 3)
    expect(seen.enough).toBe(true)
  })
  it('Weibull 606.527558, 1.720797261, −75.13461816 (R survival 3.5-3, survreg)', () => {
    const seen = life({ lives })
    expect(seen.scale).toBeCloseTo(606.527558, 6)
    expect(seen.shape).toBeCloseTo(1.720797261, 8)
    expect(seen.logLikelihood).toBeCloseTo(-75.13461816, 8)
  })
})

describe('shock absorbers, O’Connor 1985, in Meeker & Escobar 1998, table C.2: 38 distances, 11 failures', () => {
  const km =
    '6700 6950+ 7820+ 8790+ 9120 9660+ 9820+ 11310+ 11690+ 11850+ 11880+ 12140+ 12200 12870+ 13150 13330+ 13470+ 14040+ ' +
    '14300 17520 17540+ 17890+ 18450+ 18960+ 18980+ 19410+ 20100 20100+ 20150+ 20320+ 20900 22700 23490+ 26510 27410+ ' +
    '27490 27890+ 28100+'
  const lives = read(km)
  it('Weibull with its covariance and 90 % bands (weibulltools, ml_estimation snapshot: six digits of its own optimiser)', () => {
    expect(lives).toHaveLength(38)
    const fit = weibull(lives)
    expect(Math.log(fit?.scale ?? 0)).toBeCloseTo(10.22986, 5)
    expect(1 / (fit?.shape ?? 0)).toBeCloseTo(0.31641, 5)
    expect(fit?.logLikelihood).toBeCloseTo(-123.9954, 4)
    expect(fit?.covariance.location).toBeCloseTo(0.012076, 6)
    expect(fit?.covariance.both).toBeCloseTo(0.00399, 6)
    expect(fit?.covariance.spread).toBeCloseTo(0.005353, 6)
    const { bands } = life({ lives })
    expect(bands.scale?.map(Math.log)).toEqual([expect.closeTo(10.04911, 5), expect.closeTo(10.41062, 5)])
    expect(bands.shape?.map((shape) => 1 / shape)).toEqual([expect.closeTo(0.46284, 5), expect.closeTo(0.2163, 5)])
  })
  it('scale 27718.7181, shape 3.160470315, B10 13600.03 (R survival, survreg)', () => {
    const seen = life({ lives })
    expect(seen.scale).toBeCloseTo(27_718.7181, 4)
    expect(seen.shape).toBeCloseTo(3.160470315, 8)
    expect(seen.b10).toBeCloseTo(13_600.03, 2)
  })
  // By hand: at 63.2 % failed ln(−ln(1 − p)) is 0, so that point and band are the scale's own.
  it('the fit’s own band: the scale’s at 63.2 %, B10’s at 10 %', () => {
    const fit = weibull(lives)
    if (!fit) throw new Error('11 failures have a fit')
    const { scale, bands, b10 } = life({ lives })
    const there = failedBy(fit, 1 - Math.exp(-1))
    expect(there.hours).toBeCloseTo(scale ?? 0, 6)
    expect([there.low, there.high].map(Math.round)).toEqual(bands.scale?.map(Math.round))
    expect(failedBy(fit, 0.1)).toEqual({ hours: b10, low: bands.b10?.[0], high: bands.b10?.[1] })
  })
  // Standard errors printed by survfit: 0.0260 at 6,700 km, 0.1511 at 27,490 km. Our band stands on them: S^e^(±1.645·u/(S·ln S)).
  it.each([
    [6700, 0.9737, 0.026],
    [27_490, 0.2874, 0.1511],
  ])('band at %d km from the printed standard error', (hours, survival, error) => {
    const wide = (1.6449 * error) / (survival * Math.log(survival))
    expect(Math.abs((row(lives, hours)?.high ?? 0) - survival ** Math.exp(wide))).toBeLessThan(5e-4)
    expect(Math.abs((row(lives, hours)?.low ?? 0) - survival ** Math.exp(-wide))).toBeLessThan(5e-4)
  })
  it.each([
    [6700, 0.9737],
    [9120, 0.945],
    [12_200, 0.9087],
    [13_150, 0.8708],
    [14_300, 0.8273],
    [17_520, 0.7838],
    [20_100, 0.7184],
    [20_900, 0.6286],
    [22_700, 0.5388],
    [26_510, 0.4311],
    [27_490, 0.2874],
  ])('Kaplan–Meier at %d km %f (R survival, survfit)', (hours, printed) => {
    expect(row(lives, hours)?.survival).toBeCloseTo(printed, 4)
  })
})

describe('Kaplan–Meier of acute myelogenous leukemia, Miller 1997 (R survival, data set aml, survfit as printed)', () => {
  const maintained = read('9 13 13+ 18 23 28+ 31 34 45+ 48 161+')
  const not = read('5 5 8 8 12 16+ 23 27 30 33 43 45')
  it.each([
    [maintained, 9, 0.909, 3],
    [maintained, 13, 0.818, 3],
    [maintained, 18, 0.716, 3],
    [maintained, 23, 0.614, 3],
    [maintained, 31, 0.491, 3],
    [maintained, 34, 0.368, 3],
    [maintained, 48, 0.184, 3],
    [not, 5, 0.8333, 4],
    [not, 8, 0.6667, 4],
    [not, 12, 0.5833, 4],
    [not, 23, 0.4861, 4],
    [not, 27, 0.3889, 4],
    [not, 30, 0.2917, 4],
    [not, 33, 0.1944, 4],
    [not, 43, 0.0972, 4],
    [not, 45, 0, 4],
  ])('%#: at %d.. %f', (lives, hours, printed, digits) => {
    expect(row(lives, hours)?.survival).toBeCloseTo(printed, digits)
  })
  // Standard errors as printed: .0867 at 9, .1163 at 13, .1535 at 48 weeks; the band as above.
  it.each([
    [9, 0.909, 0.0867],
    [13, 0.818, 0.1163],
    [48, 0.184, 0.1535],
  ])('band at %d weeks from the printed standard error', (hours, survival, error) => {
    const wide = (1.6449 * error) / (survival * Math.log(survival))
    expect(Math.abs((row(maintained, hours)?.high ?? 0) - survival ** Math.exp(wide))).toBeLessThan(3e-3)
    expect(Math.abs((row(maintained, hours)?.low ?? 0) - survival ** Math.exp(-wide))).toBeLessThan(3e-3)
  })
  it('log-log bands of 90 % at 9, 31 and 48 weeks (R survival 3.5-3, conf.type = "log-log")', () => {
    const at = (hours: number) => [row(maintained, hours)?.low, row(maintained, hours)?.high]
    expect(at(9)).toEqual([expect.closeTo(0.6102, 4), expect.closeTo(0.982, 3)])
    expect(at(31)).toEqual([expect.closeTo(0.214, 4), expect.closeTo(0.72, 3)])
    expect(at(48)).toEqual([expect.closeTo(0.0222, 4), expect.closeTo(0.471, 3)])
    expect(row(not, 45)).toMatchObject({ survival: 0, low: null, high: null })
  })
})

describe('age replacement, ReliaWiki “Optimum Replacement Time Example”: shape 2.5, scale 1000 h, costs 1 and 5', () => {
  const question = { shape: 2.5, scale: 1000, plannedCost: 1, failureCost: 5 }
  it('is 493.0470 h (printed digits from memory; R’s optimize on the formula 493.0469618)', () => {
    const best = ageReplacement(question)
    expect(best?.interval).toBeCloseTo(493.047, 3)
    expect(best?.cost).toBeCloseTo(0.003462042739, 11)
  })
  it('has its least cost there: the formula by trapezium, either side', () => {
    const cost = (end: number) => {
      const survival = (t: number) => Math.exp(-((t / 1000) ** 2.5))
      const steps = 20_000
      let mean = 0
      for (let k = 0; k < steps; k += 1)
        mean += ((survival((k * end) / steps) + survival(((k + 1) * end) / steps)) * end) / steps / 2
      return (survival(end) + 5 * (1 - survival(end))) / mean
    }
    const at = ageReplacement(question)?.interval ?? 0
    expect(cost(at)).toBeCloseTo(0.003462042739, 9)
    expect(cost(at)).toBeLessThan(Math.min(cost(at - 5), cost(at + 5)))
  })
  it('is null where waiting costs least', () => {
    expect(ageReplacement({ ...question, shape: 1 })).toBeNull()
    expect(ageReplacement({ ...question, shape: 0.7 })).toBeNull()
    expect(ageReplacement({ ...question, failureCost: 1 })).toBeNull()
    expect(ageReplacement({ ...question, shape: 1.0001 })).toBeNull()
    expect(ageReplacement({ ...question, shape: 5000 })?.interval).toBeGreaterThan(990)
  })
})

describe('what so few lives allow', () => {
  it('under two failures the curve alone, under five no forecast', () => {
    const one = life({ lives: read('80 120+ 150+'), plannedCost: 1, failureCost: 5 })
    expect(one).toMatchObject({
      shape: null,
      scale: null,
      logLikelihood: null,
      b10: null,
      bestInterval: null,
      enough: false,
    })
    expect(one.curve).toHaveLength(1)
    const four = life({ lives: read('80 90 120 140 150+'), plannedCost: 1, failureCost: 5 })
    expect(four).toMatchObject({ b10: null, bestInterval: null, enough: false, bands: { b10: null } })
    expect(four.shape).toBeGreaterThan(1)
    const five = life({ lives: read('80 90 120 140 150'), plannedCost: 1, failureCost: 5 })
    expect(five.enough).toBe(true)
    expect(five.bestInterval).toBeGreaterThan(0)
  })

  it('no distribution where all failed at the longest life: the likelihood grows without end', () => {
    expect(life({ lives: read('100 100 100 100 100 80+') })).toMatchObject({ shape: null, enough: false })
    expect(weibull(read('100 100 100 100 99.9'))?.shape).toBeGreaterThan(1000)
  })

  it.each([
    [{ lives: [] }, 'lives'],
    [{ lives: [{ hours: 0, failed: true }] }, 'lives[0].hours'],
    [{ lives: read('5'), plannedCost: 3 }, 'failureCost'],
    [{ lives: read('5'), plannedCost: 0, failureCost: 3 }, 'plannedCost'],
  ])('refuses %o', (question, field) => {
    expect(() => life(question)).toThrow(field)
  })
})
