/** 10,000 invented lives, four in ten cut short. */
import { type Life, life, seededDraws } from '@legwork/engine'

const chance = seededDraws(1998)

export const lives: readonly Life[] = Array.from({ length: 10_000 }, () => {
  const ran = 180 * (-Math.log(1 - chance())) ** (1 / 2.2)
  const until = 60 + 240 * chance()
  return { hours: Number(Math.max(0.1, Math.min(ran, until)).toFixed(3)), failed: ran <= until }
})

/** One number that hangs on the fit, its bands, the interval and the whole curve. */
export function lifeSum(): number {
  const { scale, bands, bestInterval, curve } = life({ lives, plannedCost: 1, failureCost: 4 })
  const middle = curve[Math.ceil(curve.length / 2) - 1]
  return (scale ?? 0) + (bands.b10?.[0] ?? 0) + (bestInterval ?? 0) + (middle?.survival ?? 0) + (middle?.low ?? 0)
}
