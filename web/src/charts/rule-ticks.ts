import { scaleLinear } from 'd3-scale'

export interface Tick {
  readonly at: number
  readonly x: number
  readonly major: boolean
}

/**
 * Ticks of a rule: majors at round numbers, minors at a tenth, a fifth or a half of them, as far as they stay apart.
 *
 * @param domain  first and last value on the rule
 * @param width   its length [px]
 * @param apart   least distance of two majors [px]
 * @example ruleTicks([70, 105], 234, 60).filter((tick) => tick.major).map((tick) => tick.at) // [70, 80, 90, 100]
 */
export function ruleTicks(domain: readonly [number, number], width: number, apart = 56): Tick[] {
  const scale = scaleLinear(domain, [0, width])
  const majors = scale.ticks(Math.max(1, Math.floor(width / apart)))
  const first = majors[0]
  const second = majors[1]
  if (first === undefined) return []
  if (second === undefined) return majors.map((at) => ({ at, x: scale(at), major: true }))
  const step = second - first
  const onScreen = scale(second) - scale(first)
  const parts = [10, 5, 2, 1].find((n) => onScreen / n >= 4) ?? 1
  const ticks: Tick[] = []
  const from = Math.ceil((domain[0] - first) / (step / parts) - 1e-9)
  const to = Math.floor((domain[1] - first) / (step / parts) + 1e-9)
  for (let i = from; i <= to; i++) {
    const at = Number((first + (i * step) / parts).toPrecision(12))
    ticks.push({ at, x: scale(at), major: i % parts === 0 })
  }
  return ticks
}
