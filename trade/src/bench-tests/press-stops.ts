/** Where a press is stopped and how long it is held there. Common practice, no source. */
import { type Spring, springCurve } from '@legwork/engine'

/** A press goes no further than this share of the travel, nor than this force [N]. */
export const pressMost = { share: 0.85, force: 2000 } as const
/** [s]: the gas has given back the heat of the step; usually the scale stands still after 15 to 30 s. */
export const pressHold = 20

const millimetre = 1e-3
/** Below it a step of 10 mm would leave too few stops: a rear shock. */
const shortStroke = 0.1

/**
 * The stops of a press, in their order going down: every 10 mm, every 5 mm within 10 mm of the sag; half of that on a
 * stroke under 100 mm.
 *
 * @param spring    as the sheet says
 * @param pressure  gauge at full length [Pa]; a coil needs none
 * @param sag       where the unit will stand under its rider [m], or null
 * @returns strokes [m], at most 85 % of the stroke and where the spring pushes 2,000 N
 * @throws Refusal naming every field of the spring that can't be
 * @source common practice, no source
 * @example pressStops({ kind: 'coil', rate: 9000, stroke: 0.08 }, null, null).at(-1) // 0.065
 */
export function pressStops(spring: Spring, pressure: number | null, sag: number | null): readonly number[] {
  const step = (spring.stroke < shortStroke ? 5 : 10) * millimetre
  const { points } = springCurve(spring, { ...(pressure === null ? {} : { pressure }), points: 201 })
  const within = points.filter(
    ({ stroke, force }) => stroke <= pressMost.share * spring.stroke && force <= pressMost.force,
  )
  const deepest = within.at(-1)?.stroke ?? 0
  const fine = step / 2
  const stops: number[] = []
  for (let at = 2; at * fine <= deepest + 1e-9; at += 1) {
    const stroke = at * fine
    const isNear = sag !== null && Math.abs(stroke - sag) <= step + 1e-9
    // Rounded to a tenth of a millimetre: what a tape can be held to, and no trace of the binary fraction.
    if (at % 2 === 0 || isNear) stops.push(Math.round(stroke * 1e4) / 1e4)
  }
  return stops
}
