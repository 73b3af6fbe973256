import { figure } from '../quantities/kinds.ts'
import type { Metre } from '../quantities/si.ts'
import { type Found, refuse, stopAt, within } from '../refusal/found.ts'
import { type Deciding, decidingInstrument } from './deciding-instrument.ts'

/** Diameters at one height, one a direction. */
export type Directions = readonly Metre[]

export interface ClearanceQuestion {
  /** Upper height first, then lower. */
  readonly stanchion: readonly Directions[]
  readonly bushing: readonly Directions[]
  /** Standard uncertainty of a diameter with the instrument used. */
  readonly uStanchion: Metre
  readonly uBushing: Metre
  /** Larger is worse. */
  readonly limit: { readonly watch: Metre; readonly fail: Metre }
}

export interface Clearance {
  /** Diametral, at each height. */
  clearance: { upper: Metre; lower: Metre }
  /** 90 %, of the larger of both, which decides. */
  band: [Metre, Metre]
  /** Of the stanchion: largest less smallest diameter at one height. */
  ovality: Metre
  /** Of the stanchion: between the means of both heights. */
  taper: Metre
  verdict: 'pass' | 'watch' | 'fail' | 'cannot-tell'
  /** What would decide where a limit lies inside the band; null where nothing is open, or no instrument of a workshop would. */
  wouldDecide: Deciding | null
}

const names = ['upper', 'lower'] as const

function diametersWithin(found: Found, at: string, heights: readonly Directions[]): Found {
  if (heights.length !== 2) {
    const next = 'Measure at the upper and at the lower bushing.'
    return refuse(found, at, 'wrong-count', `${heights.length} heights`, 'two heights, upper then lower', next)
  }
  let checked = found
  heights.forEach((directions, index) => {
    const here = `${at}[${index}]`
    if (directions.length < 2 || directions.length > 12) {
      const next = 'Measure along and across the bike.'
      checked = refuse(checked, here, 'wrong-count', `${directions.length} diameters`, '2 to 12 diameters', next)
    }
    directions.forEach((diameter, which) => {
      const next = 'Give the diameter in this direction.'
      checked = within(checked, here, `[${which}]`, diameter, 'length', 0.003, 0.2, next)
    })
  })
  return checked
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values)

/** The better zone keeps its limit: 0.12 mm passes a limit of 0.12 mm, but for rounding. */
function zone(value: number, { watch, fail }: ClearanceQuestion['limit']): 'pass' | 'watch' | 'fail' {
  if (value > fail + 1e-9) return 'fail'
  return value > watch + 1e-9 ? 'watch' : 'pass'
}

/**
 * Clearance between bushing and stanchion from diameters at two heights in two or more directions.
 *
 * clearance = mean bushing − mean stanchion at each height; band ±1.645·√(uStanchion² + uBushing²): one instrument's
 * error is common to its readings, so their number does not narrow it. The larger clearance is judged.
 *
 * @param question  diameters [m], standard uncertainties [m], limits [m]
 * @returns clearance at each height, band of the larger, ovality, taper [m], verdict: cannot-tell where a limit lies in
 *          the band, then with the instrument that would decide
 * @throws Refusal naming every field that can't be
 * @source difference of two measured sizes, doubts combined after JCGM 100:2008 5.1.2
 * @example clearance({ stanchion: [[0.03497, 0.03497], [0.03496, 0.03496]], bushing: [[0.03504, 0.03504], [0.03506, 0.03506]], uStanchion: 0.000003, uBushing: 0.000005, limit: { watch: 0.00012, fail: 0.0002 } }).verdict // "pass"
 */
export function clearance(question: ClearanceQuestion): Clearance {
  const { stanchion, bushing, uStanchion, uBushing, limit } = question
  let found = diametersWithin(null, 'stanchion', stanchion)
  found = diametersWithin(found, 'bushing', bushing)
  const doubt = 'Give the standard uncertainty of the instrument; half its stated error where only that is known.'
  found = within(found, '', 'uStanchion', uStanchion, 'length', 0, 0.001, doubt)
  found = within(found, '', 'uBushing', uBushing, 'length', 0, 0.001, doubt)
  found = within(found, 'limit.', 'watch', limit.watch, 'length', 0, 0.01, 'Give the clearance from which to watch.')
  found = within(found, 'limit.', 'fail', limit.fail, 'length', 0, 0.01, 'Give the clearance that fails.')
  if (found === null && limit.fail < limit.watch) {
    const allowed = `at least limit.watch (${figure(limit.watch, 'length')})`
    found = refuse(found, 'limit.fail', 'does-not-fit', figure(limit.fail, 'length'), allowed, 'Larger is worse here.')
  }
  stopAt(found)
  const means = stanchion.map(mean)
  const [upper = 0, lower = 0] = bushing.map((directions, height) => mean(directions) - (means[height] ?? 0))
  found = null
  for (const [index, value] of [upper, lower].entries()) {
    if (Math.abs(value) < 0.002) continue
    const next = 'Check the pairs: upper with upper, lower with lower, all in one measure.'
    const allowed = `within 2 mm of the stanchion at the ${names[index]} height`
    const came = figure(mean(bushing[index] ?? []), 'length')
    found = refuse(found, `bushing[${index}]`, 'does-not-fit', came, allowed, next)
  }
  stopAt(found)
  const worst = Math.max(upper, lower)
  const half = 1.645 * Math.hypot(uStanchion, uBushing)
  const band: [number, number] = [worst - half, worst + half]
  const low = zone(band[0], limit)
  const verdict = low === zone(band[1], limit) ? low : 'cannot-tell'
  return {
    clearance: { upper, lower },
    band,
    ovality: Math.max(...stanchion.map(spread)),
    taper: spread(means),
    verdict,
    wouldDecide: verdict === 'cannot-tell' ? decidingInstrument(worst, limit, uStanchion, uBushing) : null,
  }
}
