/**
 * Lives against R's package survival (survreg, survfit, Debian r-cran-survival): 80 sets drawn by seed, 3 to 80 lives, ties,
 * many or few cut short. Replacement against R's optimize over integrate.
 */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { type Life, life, seededDraws } from '@legwork/engine'
import { ageReplacement } from '@legwork/engine/life/age-replacement.ts'
import { failedBy, weibull } from '@legwork/engine/life/weibull.ts'
import { describe, expect, it } from 'vitest'

const chance = seededDraws(1985)
const between = (low: number, high: number) => low + (high - low) * chance()

function lives(): Life[] {
  const shape = between(0.6, 6)
  const scale = between(20, 2000)
  const count = Math.floor(between(3, 80))
  const stop = scale * between(0.6, 1.8)
  const step = chance() < 0.5 ? 1 : 1e-6
  const drawn = Array.from({ length: count }, () => {
    const hours = scale * (-Math.log(1 - chance())) ** (1 / shape)
    const until = chance() < 0.3 ? stop * chance() : stop
    const ran = Math.max(step, Math.round(Math.min(hours, until) / step) * step)
    return { hours: Number(ran.toFixed(6)), failed: hours <= until }
  })
  return drawn.filter(({ failed }) => failed).length >= 2 ? drawn : lives()
}
const sets = Array.from({ length: 80 }, lives)
/** Of the normal distribution, 5 % beyond. */
const z90 = 1.6448536269514722

const asked = spawnSync('Rscript', ['--vanilla', join(import.meta.dirname, 'life.R')], {
  input: `set,hours,failed\n${sets.flatMap((set, at) => set.map(({ hours, failed }) => `${at},${hours},${Number(failed)}`)).join('\n')}\n`,
  encoding: 'utf8',
  maxBuffer: 1e8,
})
const lacking =
  asked.status === 0
    ? ''
    : `R with survival is needed (Debian: r-base-core, r-cran-survival): ${asked.error ?? asked.stderr}`
const rows = (asked.stdout ?? '').split('\n').map((line) => line.split(','))
const rowsOf = (kind: string, set: number) =>
  rows.filter((row) => row[0] === kind && Number(row[1]) === set).map((row) => row.slice(2).map(Number))

function near(ours: number | null | undefined, theirs: number | undefined, tolerance: number, what: string): void {
  const wanted = theirs ?? Number.NaN
  expect(Math.abs((ours ?? Number.NaN) - wanted), `${what}: ${ours} for ${theirs}`).toBeLessThanOrEqual(
    tolerance * Math.max(1e-3, Math.abs(wanted)),
  )
}

describe.skipIf(lacking !== '' && process.env.CI !== 'true')(`lives against R's survival ${lacking}`, () => {
  it('Weibull: shape, scale, log likelihood, covariance; 10, 50 and 90 % failed by when, with bands', () => {
    expect(lacking).toBe('')
    sets.forEach((set, at) => {
      const [shape, scale, logLikelihood, location = 0, spread = 0, both = 0] = rowsOf('fit', at)[0] ?? []
      const fit = weibull(set)
      near(fit?.shape, shape, 1e-6, `shape ${at}`)
      near(fit?.scale, scale, 1e-6, `scale ${at}`)
      near(fit?.logLikelihood, logLikelihood, 1e-9, `log likelihood ${at}`)
      near(fit?.covariance.location, location, 1e-5, `variance of ln scale ${at}`)
      const sigma = 1 / (shape ?? Number.NaN)
      near(fit?.covariance.spread, spread * sigma ** 2, 1e-5, `variance of 1/shape ${at}`)
      near(fit?.covariance.both, both * sigma, 1e-5, `covariance ${at}`)
      const quantiles = rowsOf('failed', at)
      expect(quantiles).toHaveLength(3)
      for (const [share = 0, log = 0, doubt = 0] of quantiles) {
        const ours = fit && failedBy(fit, share)
        near(ours?.hours, Math.exp(log), 1e-6, `${share} failed by, ${at}`)
        near(ours?.low, Math.exp(log - z90 * doubt), 1e-5, `${share} failed from, ${at}`)
        near(ours?.high, Math.exp(log + z90 * doubt), 1e-5, `${share} failed to, ${at}`)
      }
      const { b10, bands, enough } = life({ lives: set })
      if (!enough || !fit) return
      const tenth = failedBy(fit, 0.1)
      expect([b10, bands.b10]).toEqual([tenth.hours, [tenth.low, tenth.high]])
    })
  })

  it('Kaplan–Meier with its log-log band', () => {
    sets.forEach((set, at) => {
      const theirs = rowsOf('survival', at)
      const { curve } = life({ lives: set })
      expect(curve).toHaveLength(theirs.length)
      curve.forEach(({ hours, survival, low, high }, index) => {
        const [time, share = Number.NaN, lower, upper] = theirs[index] ?? []
        near(hours, time, 1e-12, `time ${at}`)
        expect(Math.abs(survival - share)).toBeLessThanOrEqual(1e-12)
        if (low === null || high === null) expect(survival).toBe(0)
        else {
          near(low, lower, 1e-9, `low ${at}`)
          near(high, upper, 1e-9, `high ${at}`)
        }
      })
    })
  })

  it('age replacement at costs of 1 and 5', () => {
    let compared = 0
    sets.forEach((set, at) => {
      const [interval, cost] = rowsOf('replacement', at)[0] ?? []
      const fit = weibull(set)
      if (interval === undefined || !fit) return
      const best = ageReplacement({ ...fit, plannedCost: 1, failureCost: 5 })
      near(best?.cost, cost, 1e-7, `cost ${at}`)
      near(best?.interval, interval, 1e-3, `interval ${at}`)
      compared += 1
    })
    expect(compared).toBeGreaterThan(40)
  })
})
