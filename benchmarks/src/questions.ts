/** The demonstration fork that is timed, and what is asked of it. */
import {
  fullStroke,
  prepareSpring,
  pressureForSag,
  type Spring,
  sag,
  springCurve,
  standardAtmospherePressure,
} from '@legwork/engine'
import reference from '@legwork/engine/reference/demo-units.json' with { type: 'json' }

const unit = reference.units.find(({ unit }) => unit === 'U01')
if (unit?.pressure === undefined) throw new Error('the reference has no air unit U01')

// JSON widens the kind to string; the engine checks every field of a spring it is asked about.
const spring = unit.spring as Spring

export const fork = {
  spring,
  pressure: unit.pressure,
  load: unit.load,
  friction: 40,
  exponent: 1.3,
  wantedSag: unit.sag / unit.spring.stroke,
  ambient: standardAtmospherePressure,
}

/** Loads from 150 to 650 N, evenly spread: no two sags of a batch alike. */
export function loads(count: number): number[] {
  return Array.from({ length: count }, (_, index) => 150 + (500 * index) / (count - 1))
}

export function oneSag(load = fork.load): number {
  return sag(spring, { pressure: fork.pressure, load }).stroke
}

export function sagsOf(batch: readonly number[]): number {
  let sum = 0
  for (const load of batch) sum += oneSag(load)
  return sum
}

/** Everything a set-up slider redraws, moved to a pressure. */
export function slider(pressure: number) {
  const { load, friction, exponent, ambient } = fork
  const slow = springCurve(spring, { pressure, ambient })
  const rest = sag(spring, { pressure, load, friction, ambient })
  const fast = springCurve(spring, { pressure, ambient, exponent, startStroke: rest.stroke })
  const wanted = pressureForSag(spring, { load, sag: fork.wantedSag, ambient })
  const end = prepareSpring(spring, pressure, { ambient }).force(fullStroke(spring))
  return { slow, rest, fast, wanted, end }
}

/** One number that hangs on everything the slider needs. */
export function sliderSum(pressure: number): number {
  const { slow, rest, fast, wanted, end } = slider(pressure)
  let sum = rest.stroke + rest.low + rest.high + wanted.pressure + end
  for (const { force } of slow.points) sum += force
  for (const { force } of fast.points) sum += force
  return sum
}
