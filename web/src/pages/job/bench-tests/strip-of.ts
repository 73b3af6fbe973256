/** A judged reading as a strip of limits is drawn: ends, stretches, the limits that are written under it. */
import type { Zone } from '@legwork/trade'
import type { LimitZone } from '../../../charts/limit-zones.ts'

export interface StripShape {
  min: number
  max: number
  zones: readonly LimitZone[]
  limits: readonly number[]
  value: number
  low?: number
  high?: number
}

/** From 0 to well beyond the outermost limit and the reading [SI]. */
export function stripOf(value: number, zones: readonly Zone[], halfWidth: number): StripShape {
  const limits = zones.map((zone) => zone.from).filter(Number.isFinite)
  const outer = limits.at(-1) ?? value
  const max = Math.max(outer * 1.4, Math.min(value * 1.1, outer * 2))
  const stretches = zones.map((zone, index) => ({
    from: Math.max(0, zone.from),
    to: zones[index + 1]?.from ?? max,
    verdict: zone.verdict,
  }))
  const doubt = halfWidth > 0 ? { low: Math.max(0, value - halfWidth), high: value + halfWidth } : {}
  return { min: 0, max, zones: stretches, limits, value, ...doubt }
}
