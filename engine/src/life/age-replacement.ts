import { brent } from '../numerics/brent.ts'
import { type Found, refuse, stopAt, within } from '../refusal/found.ts'

export interface ReplacementQuestion {
  readonly shape: number
  /** [h] */
  readonly scale: number
  /** Of replacing in time, any currency. */
  readonly plannedCost: number
  /** Of a failure, in the same. */
  readonly failureCost: number
}

export interface Replacement {
  /** [h] */
  interval: number
  /** Cost an hour with it. */
  cost: number
}

/** ∫₀ˣ e^(−uᵝ) du = x·e^(−z)·Σ zⁿ/((1 + a)…(n + a)), z = xᵝ, a = 1/β. */
function meanUpTo(x: number, shape: number): number {
  const power = x ** shape
  let term = 1
  let sum = 1
  for (let n = 1; term > 1e-17 * sum && n < 1000; n += 1) {
    term *= power / (n + 1 / shape)
    sum += term
  }
  return x * Math.exp(-power) * sum
}

/** z beyond which fewer than one in a million still run: replacing there saves nothing. */
const nearlyAll = Math.log(1e6)

/**
 * Age at which replacing costs least.
 *
 * cost(t) = (C_p·R + C_f·(1 − R))/∫₀ᵗR, R = e^(−(t/η)ᵝ); least where β·x^(β−1)·∫₀ˣR + R = C_f/(C_f − C_p), x = t/η.
 *
 * @param question  shape up to 10 000, scale up to 10⁷ h, costs above 0 up to 10⁹
 * @returns interval [h] and its cost an hour; null where waiting for the failure costs least: shape ≤ 1, C_f ≤ C_p, or an
 *          interval that fewer than one in a million reaches
 * @throws Refusal naming every field that can't be
 * @source R. E. Barlow, F. Proschan, Mathematical Theory of Reliability (1965), age replacement
 * @example ageReplacement({ shape: 2.5, scale: 1000, plannedCost: 1, failureCost: 5 }).interval // 493.04696
 */
export function ageReplacement(question: ReplacementQuestion): Replacement | null {
  const { shape, scale, plannedCost, failureCost } = question
  let found: Found = within(null, '', 'shape', shape, 'number', 0.01, 1e4, 'Give the shape of the lives.')
  found = within(found, '', 'scale', scale, 'number', 0.001, 1e7, 'Give the scale of the lives.')
  found = costWithin(found, 'plannedCost', plannedCost)
  found = costWithin(found, 'failureCost', failureCost)
  stopAt(found)
  if (shape <= 1 || failureCost <= plannedCost) return null
  const wanted = failureCost / (failureCost - plannedCost)
  const last = nearlyAll ** (1 / shape)
  const rising = (x: number) => shape * x ** (shape - 1) * meanUpTo(x, shape) + Math.exp(-(x ** shape)) - wanted
  const x = brent(rising, 0, last, 1e-14)
  if (x === null) return null
  const survival = Math.exp(-(x ** shape))
  const cost = (plannedCost * survival + failureCost * (1 - survival)) / (scale * meanUpTo(x, shape))
  return { interval: x * scale, cost }
}

/** Above 0 up to 10⁹. */
export function costWithin(found: Found, name: string, cost: number): Found {
  const next = 'Give what it costs, in any currency.'
  if (cost === 0) return refuse(found, name, 'out-of-range', '0', 'above 0', next)
  return within(found, '', name, cost, 'number', 0, 1e9, next)
}
