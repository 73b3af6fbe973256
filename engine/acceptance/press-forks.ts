/** Forks drawn by rule, and what a press would read on them: the truth of every cell is known. */
import { type AirSpring, type Draws, normalDraw, type PressQuestion, prepareSpring, seededDraws } from '@legwork/engine'
import reference from '../reference/demo-units.json' with { type: 'json' }

const unit = reference.units.find(({ unit }) => unit === 'U01')
if (unit?.pressure === undefined) throw new Error('the reference has no air unit U01')

/** The test fork: U01's invented dimensions. JSON widens the kind to string; the engine checks every field. */
export const testFork = unit.spring as AirSpring
export const testPressure = unit.pressure

/** Stops of the press [m]. */
export const stops = [10, 20, 25, 30, 35, 40, 55, 70, 85, 100, 113, 127].map((mm) => mm / 1000)
/** What the readings doubt: 4 N, 0.7 mm, and 2 % of the gauge once a session. */
export const doubts = { forceSd: 4, strokeSd: 0.0007, gaugeSd: 0.02 }

export interface Truth {
  /** The fork as it really is. */
  readonly spring: AirSpring
  /** Negative gauge at full length ÷ what the port would give. */
  readonly negative?: number
  /** Half the gap between both directions [N]; drawn from 10 to 25 N where not given. */
  readonly friction?: number
}

/** How far a real sheet may be off: ± these, evenly. */
export interface Tolerances {
  readonly positive: number
  readonly negative: number
  readonly lower: number
  readonly port: number
  readonly strokeZero: number
}
export const exactSheet: Tolerances = { positive: 0, negative: 0, lower: 0, port: 0, strokeZero: 0 }
export const realSheet: Tolerances = { positive: 0.015, negative: 0.04, lower: 0.03, port: 0.0003, strokeZero: 0.0005 }

function offSheet(spring: AirSpring, by: Tolerances, draw: Draws): AirSpring {
  const near = (share: number) => 1 + share * (2 * draw() - 1)
  const { lower, negativeVolume = 0, equalisingStroke = 0 } = spring
  return {
    ...spring,
    positiveVolume: spring.positiveVolume * near(by.positive),
    negativeVolume: negativeVolume * near(by.negative),
    equalisingStroke: equalisingStroke + by.port * (2 * draw() - 1),
    ...(lower ? { lower: { ...lower, volume: lower.volume * near(by.lower) } } : {}),
  }
}

/** The negative gauge a port would give at full length. */
function portGauge(spring: AirSpring, pressure: number): number {
  const ambient = 101_325
  const chamber = spring.positiveVolume - (spring.spacers ?? 0) * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
  const { negativeVolume = 0, equalisingStroke: port = 0 } = spring
  const swept = (Math.PI / 4) * spring.bore ** 2 * port
  const ring = (Math.PI / 4) * (spring.bore ** 2 - spring.shaft ** 2) * port
  return ((((pressure + ambient) * chamber) / (chamber - swept)) * (negativeVolume + ring)) / negativeVolume - ambient
}

/**
 * Readings of one session.
 *
 * @param seed       of everything drawn: fork number i of any cell is drawn with seed i
 * @param pressures  what the gauge shows at each press, as a share of the fork's pressure
 */
export function session(
  truth: Truth,
  seed: number,
  pressures: readonly number[],
  by = exactSheet,
): { question: PressQuestion; friction: number } {
  const draw = seededDraws(seed)
  const normal = () => normalDraw(draw)
  const gauge = 1 + doubts.gaugeSd * normal()
  const friction = truth.friction ?? 10 + 15 * draw()
  const made = offSheet(truth.spring, by, draw)
  const zero = by.strokeZero * (2 * draw() - 1)
  const presses = pressures.map((share) => {
    const pressure = testPressure * share
    const there = pressure * gauge
    const spring: AirSpring =
      truth.negative === undefined
        ? made
        : { ...made, negative: { kind: 'valve', pressure: truth.negative * portGauge(made, there) } }
    const prepared = prepareSpring(spring, there)
    const read = (stroke: number, direction: number) =>
      prepared.force(stroke + zero + doubts.strokeSd * normal()) + direction * friction + doubts.forceSd * normal()
    return {
      pressure,
      readings: stops.map((stroke) => ({ stroke, pressing: read(stroke, 1), releasing: read(stroke, -1) })),
    }
  })
  return { question: { presses, ...doubts }, friction }
}
