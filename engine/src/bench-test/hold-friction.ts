import type { Metre, Newton, Pascal, Second } from '../quantities/si.ts'
import { refuseOne, stopAt, within } from '../refusal/found.ts'
import { strokeWithin } from '../spring/check-conditions.ts'
import type { Spring } from '../spring/spring.ts'
import { drawnOut, mainPressure, type SpringState, springState, squeezed } from '../spring/spring-state.ts'

export interface HoldQuestion {
  /** Gauge at full length; a coil needs none. */
  readonly pressure?: Pascal
  /** Stops of the press, in its order down; the readings coming back are taken at the same. */
  readonly strokes: readonly Metre[]
  /** How long each stop is held before it is read. */
  readonly hold: Second
  readonly ambient?: Pascal
}

export interface HoldFriction {
  /** Mean over the stops: gas that cools in 4 s, and in 10 s. */
  friction: [Newton, Newton]
  stops: { stroke: Metre; friction: [Newton, Newton] }[]
}

/** How long the gas takes to give up 63 % of its heat: an estimate. */
export const coolingTimes: readonly [Second, Second] = [4, 10]
const diatomic = 1.4

/** Absolute pressures of every gas in a slow spring, each with the area it pushes on; a pulling gas has a negative one. */
function gasesAt(slow: SpringState, x: number): { pressure: number; area: number }[] {
  const { main, negative, damper, lower } = slow
  return [
    { pressure: main.area > 0 ? mainPressure(slow, x) : 1, area: main.area },
    { pressure: negative.area > 0 ? drawnOut(negative, x, 1) : 1, area: -negative.area },
    { pressure: damper.area > 0 ? squeezed(damper, x, 1) : 1, area: damper.area },
    ...lower.map((leg) => ({ pressure: squeezed(leg, x, 1), area: leg.area })),
  ]
}

/** Half the gap between both directions at each stop, that the warm and the cold gas alone leave. */
function falseFriction(slow: SpringState, { strokes, hold }: HoldQuestion, cooling: Second): number[] {
  const kept = Math.exp(-hold / cooling)
  let gases = gasesAt(slow, 0)
  let excess = gases.map(() => 1)
  const readAt = (stroke: number) => {
    const there = gasesAt(slow, stroke)
    let force = 0
    excess = excess.map((ratio, index) => {
      const one = there[index]
      if (!one) return ratio
      // The slow pressures stand inverse to the volumes: P·V^1.4 leaves (V before/V after)^0.4 above the slow one.
      const stepped = ratio * (one.pressure / (gases[index]?.pressure ?? one.pressure)) ** (diatomic - 1)
      const after = 1 + (stepped - 1) * kept
      force += one.area * one.pressure * (after - 1)
      return after
    })
    gases = there
    return force
  }
  const down = strokes.map(readAt)
  const up = strokes.toReversed().map(readAt).reverse()
  return down.map((force, index) => (force - (up[index] ?? force)) / 2)
}

/**
 * Friction that is none: what a press reads as friction because the gas, warmed by each step down and cooled by each
 * step back, was not held long enough.
 *
 * After a step every gas is at P·V^1.4; what it is off its slow pressure falls by e^(−hold/τ), τ = 4 … 10 s.
 *
 * @param spring    as the sheet says
 * @param question  gauge pressure [Pa], stops [m], hold [s]
 * @returns false friction [N] for both ends of τ: mean, and at each stop
 * @throws Refusal naming every field that can't be
 * @source ideal gas, adiabatic steps; τ is an estimate, no source
 * @example holdFriction({ kind: 'coil', rate: 9000, stroke: 0.15 }, { strokes: [0.05, 0.1], hold: 5 }).friction // [0,0]
 */
export function holdFriction(spring: Spring, question: HoldQuestion): HoldFriction {
  const { strokes, hold, pressure, ambient } = question
  if (strokes.length < 1 || strokes.length > 200) {
    refuseOne('strokes', 'wrong-count', `${strokes.length} stops`, '1 to 200 stops', 'Give the stops of the press.')
  }
  stopAt(within(null, '', 'hold', hold, 'duration', 0, 3600, 'Give how long each stop is held, like "20 s".'))
  const slow = springState(spring, {
    ...(pressure === undefined ? {} : { pressure }),
    ...(ambient === undefined ? {} : { ambient }),
  })
  let found = null as ReturnType<typeof strokeWithin>
  strokes.forEach((stroke, index) => {
    found = strokeWithin(found, `strokes[${index}]`, stroke, slow.fullStroke)
  })
  stopAt(found)
  const [quick, slack] = coolingTimes.map((cooling) => falseFriction(slow, question, cooling))
  const stops = strokes.map((stroke, index): HoldFriction['stops'][number] => ({
    stroke,
    friction: [quick?.[index] ?? 0, slack?.[index] ?? 0],
  }))
  const mean = (end: 0 | 1) => stops.reduce((sum, { friction }) => sum + friction[end], 0) / stops.length
  return { friction: [mean(0), mean(1)], stops }
}
