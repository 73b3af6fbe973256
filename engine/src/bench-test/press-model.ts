/** Forces and slopes a hypothesis foresees at every stop, as a function of the pressure scale. */
import { standardAtmospherePressure } from '../quantities/si.ts'
import type { Spring } from '../spring/spring.ts'
import { type ForceAndRate, forceAt } from '../spring/spring-force.ts'
import { stateOfChecked } from '../spring/spring-state.ts'
import { type HypothesisName, supposedSpring } from './press-hypothesis.ts'
import type { PressQuestion } from './press-question.ts'

/** All stops of all presses, one after the other. */
export interface Stops {
  readonly count: number
  readonly stroke: Float64Array
  /** Half the sum of both readings: the spring. */
  readonly mean: Float64Array
  /** Half their difference: the friction. */
  readonly half: Float64Array
  readonly last: number
}

export function stopsOf({ presses }: PressQuestion): Stops {
  const all = presses.flatMap(({ readings }) => readings)
  return {
    count: all.length,
    stroke: Float64Array.from(all, ({ stroke }) => stroke),
    mean: Float64Array.from(all, ({ pressing, releasing }) => (pressing + releasing) / 2),
    half: Float64Array.from(all, ({ pressing, releasing }) => (pressing - releasing) / 2),
    last: Math.max(...all.map(({ stroke }) => stroke)),
  }
}

/** At every stop: force [N], its slope over the stroke [N/m], and how both change with the scale. */
export interface Foreseen {
  readonly force: Float64Array
  readonly rate: Float64Array
  readonly forceByScale: Float64Array
  readonly rateByScale: Float64Array
}

const out: ForceAndRate = { force: 0, rate: 0 }

function forcesInto(
  spring: Spring,
  question: PressQuestion,
  name: HypothesisName,
  value: number,
  scale: number,
  force: Float64Array,
  rate: Float64Array,
): void {
  const ambient = question.ambient ?? standardAtmospherePressure
  let index = 0
  for (const { pressure = 0, readings } of question.presses) {
    const there = supposedSpring(spring, name, value, scale, pressure, ambient)
    const state = stateOfChecked(there.spring, { pressure: there.pressure, ambient })
    for (const { stroke } of readings) {
      forceAt(state, stroke, out)
      force[index] = out.force
      rate[index] = out.rate
      index += 1
    }
  }
}

/**
 * Forces of one hypothesis.
 *
 * @returns for a value of its parameter, a function of the scale; what that gives is overwritten by the next question
 */
export function foreseenBy(
  spring: Spring,
  question: PressQuestion,
  stops: Stops,
  name: HypothesisName,
): (value: number) => (scale: number) => Foreseen {
  const made = () => new Float64Array(stops.count)
  const given = { force: made(), rate: made(), forceByScale: made(), rateByScale: made() }
  if (spring.kind === 'coil') {
    return (value) => {
      forcesInto(spring, question, name, value, 1, given.force, given.rate)
      return () => given
    }
  }
  const [lowForce, lowRate, highForce, highRate] = [made(), made(), made(), made()]
  const between = (value: number, low: number, high: number) => {
    forcesInto(spring, question, name, value, low, lowForce, lowRate)
    forcesInto(spring, question, name, value, high, highForce, highRate)
    for (let index = 0; index < stops.count; index += 1) {
      given.forceByScale[index] = ((highForce[index] ?? 0) - (lowForce[index] ?? 0)) / (high - low)
      given.rateByScale[index] = ((highRate[index] ?? 0) - (lowRate[index] ?? 0)) / (high - low)
    }
  }
  if (spring.second) {
    // A floating piston moves once the pressures meet: not straight in the scale.
    return (value) => (scale) => {
      between(value, scale * 0.9999, scale * 1.0001)
      forcesInto(spring, question, name, value, scale, given.force, given.rate)
      return given
    }
  }
  // Every force of a closed gas is straight in its filling: two scales tell all of them.
  return (value) => {
    between(value, 0.5, 1.5)
    return (scale) => {
      for (let index = 0; index < stops.count; index += 1) {
        given.force[index] = (lowForce[index] ?? 0) + (given.forceByScale[index] ?? 0) * (scale - 0.5)
        given.rate[index] = (lowRate[index] ?? 0) + (given.rateByScale[index] ?? 0) * (scale - 0.5)
      }
      return given
    }
  }
}
