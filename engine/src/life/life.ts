import { refuse, stopAt } from '../refusal/found.ts'
import { ageReplacement, costWithin } from './age-replacement.ts'
import { kaplanMeier, type Survival } from './kaplan-meier.ts'
import { type Life, livesWithin, z90 } from './lives.ts'
import { failedBy, weibull } from './weibull.ts'

export interface LifeQuestion {
  readonly lives: readonly Life[]
  /** Of replacing in time and of a failure, in one currency; both or none. */
  readonly plannedCost?: number
  readonly failureCost?: number
}

export interface LifeBands {
  shape: [number, number] | null
  scale: [number, number] | null
  b10: [number, number] | null
}

export interface LifeAnswer {
  /** Under 1 early failures, 1 by chance, over 1 wear; null under two failures or where they don't vary. */
  shape: number | null
  /** By then 63.2 % have failed [h]. */
  scale: number | null
  /** 90 %. */
  bands: LifeBands
  logLikelihood: number | null
  /** By then one in ten has failed [h]. */
  b10: number | null
  /** Age at which replacing costs least [h]; null where waiting does. */
  bestInterval: number | null
  /** At least five failures. */
  enough: boolean
  curve: Survival[]
}

/** A shop's few lives prove little: below so many failures there is the curve and no forecast. */
const failuresNeeded = 5

function band(logValue: number, variance: number): [number, number] {
  const half = z90 * Math.sqrt(variance)
  return [Math.exp(logValue - half), Math.exp(logValue + half)]
}

/**
 * How long parts last: Weibull and Kaplan–Meier, with the interval that costs least.
 *
 * Bands log-normal (Wald): exp(ln v ± 1.645·u(ln v)); B10 = η·(−ln 0.9)^(1/β).
 *
 * @param question  1 … 100 000 lives [h]; costs
 * @returns shape, scale, B10, interval [h] with 90 % bands; null as each field says
 * @throws Refusal naming every field that can't be
 * @source W. Q. Meeker, L. A. Escobar, Statistical Methods for Reliability Data (1998), chapter 8
 * @example life({ lives: [{ hours: 80, failed: true }, { hours: 120, failed: true }, { hours: 150, failed: false }] }).scale // 140.4317
 */
export function life(question: LifeQuestion): LifeAnswer {
  const { lives, plannedCost, failureCost } = question
  let found = livesWithin(lives)
  if (plannedCost !== undefined) found = costWithin(found, 'plannedCost', plannedCost)
  if (failureCost !== undefined) found = costWithin(found, 'failureCost', failureCost)
  if ((plannedCost === undefined) !== (failureCost === undefined)) {
    const lacking = plannedCost === undefined ? 'plannedCost' : 'failureCost'
    const allowed = 'there with the other: the interval weighs the two'
    found = refuse(found, lacking, 'missing', 'missing', allowed, 'Give both costs or none.')
  }
  stopAt(found)
  const curve = kaplanMeier(lives)
  const fit = weibull(lives)
  const enough = fit !== null && lives.filter(({ failed }) => failed).length >= failuresNeeded
  if (!fit) {
    const bands = { shape: null, scale: null, b10: null }
    const none = { shape: null, scale: null, logLikelihood: null, b10: null, bestInterval: null }
    return { ...none, bands, enough: false, curve }
  }
  const { shape, scale, logLikelihood, covariance } = fit
  const tenth = enough ? failedBy(fit, 0.1) : null
  const bands: LifeBands = {
    shape: band(Math.log(shape), covariance.spread * shape * shape),
    scale: band(Math.log(scale), covariance.location),
    b10: tenth && [tenth.low, tenth.high],
  }
  const best =
    enough && plannedCost !== undefined && failureCost !== undefined
      ? ageReplacement({ shape, scale, plannedCost, failureCost })
      : null
  return {
    shape,
    scale,
    bands,
    logLikelihood,
    b10: tenth?.hours ?? null,
    bestInterval: best?.interval ?? null,
    enough,
    curve,
  }
}
