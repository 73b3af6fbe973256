/** A stretch of a strip and what a reading in it means. */
export interface LimitZone {
  readonly from: number
  readonly to: number
  readonly verdict: 'pass' | 'watch' | 'fail'
}

/** Larger is worse, smaller is worse, or both. */
export interface Limits {
  readonly watch?: number
  readonly fail?: number
  readonly watchBelow?: number
  readonly failBelow?: number
}

/**
 * Zones of a strip from min to max, in order, without gaps. A limit that isn't given makes no zone.
 *
 * @example limitZones({ watch: 25, fail: 45 }, 0, 70)
 * // pass 0…25, watch 25…45, fail 45…70
 */
export function limitZones(limits: Limits, min: number, max: number): LimitZone[] {
  const within = (value: number) => Math.min(max, Math.max(min, value))
  const failBelow = within(limits.failBelow ?? min)
  const passFrom = within(Math.max(failBelow, limits.watchBelow ?? failBelow))
  const failFrom = within(limits.fail ?? max)
  const passTo = within(Math.min(failFrom, limits.watch ?? failFrom))
  const zones: LimitZone[] = [
    { from: min, to: failBelow, verdict: 'fail' },
    { from: failBelow, to: passFrom, verdict: 'watch' },
    { from: passFrom, to: passTo, verdict: 'pass' },
    { from: passTo, to: failFrom, verdict: 'watch' },
    { from: failFrom, to: max, verdict: 'fail' },
  ]
  return zones.filter((zone) => zone.to > zone.from)
}

/** A strip's end with room beyond the outermost limit and the reading: 1.4 times the larger, rounded up to two digits. */
export function stripEnd(limits: Limits, value: number): number {
  const outer = Math.max(limits.fail ?? 0, limits.watch ?? 0, limits.watchBelow ?? 0, limits.failBelow ?? 0)
  const end = Math.max(outer * 1.4, value <= outer * 2 ? value * 1.1 : 0)
  if (end <= 0) return 1
  const digit = 10 ** (Math.floor(Math.log10(end)) - 1)
  return Number((Math.ceil(end / digit - 1e-9) * digit).toPrecision(3))
}
