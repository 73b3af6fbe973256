/**
 * A spring made ready for work: every gas with its pressure and volume at one stroke, everything else as plain numbers.
 * Made once, asked many times; the questions allocate nothing.
 */
import { standardAtmospherePressure } from '../quantities/si.ts'
import { checkConditions } from './check-conditions.ts'
import { fullStroke, legAir, legArea, positiveChamber, ringArea } from './dimensions.ts'
import type { AirSpring, DamperGas, LowerAir, Process, Spring } from './spring.ts'

/** A closed gas whose volume is V(x) = volume ∓ area·x: its absolute pressure p at volume v, all that is needed later. */
export interface Gas {
  area: number
  /** At x = 0 [m³]. */
  volume: number
  /** Absolute [Pa], when it filled `at` [m³]. */
  pressure: number
  at: number
}

export interface SpringState {
  ambient: number
  exponent: number
  stroke: number
  fullStroke: number
  /** Main gas; area 0 for a coil. */
  main: Gas
  /** Behind the floating piston; area 0 where there is none. */
  second: Gas
  negative: Gas
  negativeRate: number
  negativeLength: number
  damper: Gas
  lower: Gas[]
  coilRate: number
  preload: number
  topOutRate: number
  topOutLength: number
  bumperRate: number
  bumperLength: number
  bumperExponent: number
}

function gas(area: number, volume: number, pressure: number, at: number): Gas {
  return { area, volume, pressure, at }
}
const noGas = (): Gas => gas(0, 1, 0, 1)

/**
 * Absolute pressure of the main gas at a stroke, second chamber included:
 * while the floating piston rests p·V^k of the main gas alone; then both gases share the volume at one pressure.
 */
export function mainPressure(state: SpringState, x: number): number {
  const { main, second, exponent } = state
  const volume = main.volume - main.area * x
  if (second.area === 0) {
    return exponent === 1 ? (main.pressure * main.at) / volume : main.pressure * (main.at / volume) ** exponent
  }
  const share = main.pressure ** (1 / exponent) * main.at
  const behind = second.pressure ** (1 / exponent) * second.at
  const rests = share * second.volume <= behind * volume
  return (rests ? share / volume : (share + behind) / (volume + second.volume)) ** exponent
}

/** Absolute pressure of a gas that is squeezed with the stroke. */
export function squeezed(one: Gas, x: number, exponent: number): number {
  const ratio = one.at / (one.volume - one.area * x)
  return exponent === 1 ? one.pressure * ratio : one.pressure * ratio ** exponent
}

/** Absolute pressure of a gas that is drawn out with the stroke. */
export function drawnOut(one: Gas, x: number, exponent: number): number {
  const ratio = one.at / (one.volume + one.area * x)
  return exponent === 1 ? one.pressure * ratio : one.pressure * ratio ** exponent
}

function airInto(state: SpringState, spring: AirSpring, pressure: number, pressureAt: number): void {
  const { ambient } = state
  const area = ringArea(spring.bore, spring.positiveShaft ?? 0)
  const volume = positiveChamber(spring)
  state.main = gas(area, volume, ((pressure + ambient) * (volume - area * pressureAt)) / volume, volume)
  if (spring.second) {
    const { volume: behind, pressure: fill } = spring.second
    // The area only marks that it is there: a floating piston has the same pressure on both sides.
    state.second = gas(1, behind, fill + ambient, behind)
  }
  const kind = spring.negative?.kind ?? 'port'
  if (spring.negative?.kind === 'coil') {
    state.negativeRate = spring.negative.rate
    state.negativeLength = spring.negative.length
  }
  if (kind === 'coil' || kind === 'none' || spring.negativeVolume === undefined) return
  const ring = ringArea(spring.bore, spring.shaft)
  const { negativeVolume } = spring
  if (spring.negative?.kind === 'valve') {
    state.negative = gas(ring, negativeVolume, spring.negative.pressure + ambient, negativeVolume)
    return
  }
  const port = spring.equalisingStroke ?? 0
  state.negative = gas(ring, negativeVolume, mainPressure(state, port), negativeVolume + ring * port)
}

function lowerInto(state: SpringState, lower: LowerAir): void {
  const closedAt = lower.closedAt ?? state.ambient
  const closedStroke = lower.closedStroke ?? 0
  for (const leg of lower.legs) {
    const area = legArea(lower, leg)
    const volume = legAir(lower, leg)
    state.lower.push(gas(area, volume, closedAt, volume - area * closedStroke))
  }
}

function damperInto(state: SpringState, damper: DamperGas): void {
  state.damper = gas(ringArea(damper.rod, 0), damper.volume, damper.pressure + state.ambient, damper.volume)
}

/** From here on every gas follows p·V^k from where it is at `stroke`; ports are closed. */
function fastFrom(state: SpringState, stroke: number, exponent: number): void {
  const { main, second, negative, damper, lower } = state
  if (main.area > 0) {
    const pressure = mainPressure(state, stroke)
    const mainAt = (main.pressure * main.at) / pressure
    if (second.area > 0) {
      const behindAt = main.volume - main.area * stroke + second.volume - mainAt
      second.pressure = (second.pressure * second.at) / behindAt
      second.at = behindAt
    }
    main.pressure = pressure
    main.at = mainAt
  }
  if (negative.area > 0) {
    negative.pressure = drawnOut(negative, stroke, 1)
    negative.at = negative.volume + negative.area * stroke
  }
  for (const leg of lower) {
    leg.pressure = squeezed(leg, stroke, 1)
    leg.at = leg.volume - leg.area * stroke
  }
  damper.pressure = squeezed(damper, stroke, 1)
  damper.at = damper.volume - damper.area * stroke
  state.exponent = exponent
}

/** As `springState`, for a spring and conditions that were checked. */
export function stateOfChecked(spring: Spring, process: Process): SpringState {
  const { topOut, bumper } = spring
  const coil = spring.kind === 'coil'
  const state: SpringState = {
    ambient: process.ambient ?? standardAtmospherePressure,
    exponent: 1,
    stroke: spring.stroke,
    fullStroke: fullStroke(spring),
    main: noGas(),
    second: noGas(),
    negative: noGas(),
    negativeRate: 0,
    negativeLength: 0,
    damper: noGas(),
    lower: [],
    coilRate: coil ? spring.rate : 0,
    preload: coil ? (spring.preload ?? 0) : 0,
    topOutRate: topOut ? topOut.rate : 0,
    topOutLength: topOut ? topOut.length : 0,
    bumperRate: bumper ? bumper.rate : 0,
    bumperLength: bumper ? bumper.length : 0,
    bumperExponent: bumper ? bumper.exponent : 1,
  }
  if (!coil) airInto(state, spring, process.pressure ?? 0, process.pressureAt ?? 0)
  if (spring.lower) lowerInto(state, spring.lower)
  if (spring.damperGas) damperInto(state, spring.damperGas)
  const exponent = process.exponent ?? 1
  if (exponent !== 1) fastFrom(state, process.startStroke ?? 0, exponent)
  return state
}

/**
 * A spring made ready, checked first.
 *
 * @param spring   dimensions
 * @param process  pressure, air around, slow or fast
 * @param at       path of the spring in messages
 * @throws Refusal naming every field that can't be
 * @example springState({ kind: 'coil', rate: 9000, stroke: 0.15 }, {}).fullStroke // 0.15
 */
export function springState(spring: Spring, process: Process, at = 'spring.'): SpringState {
  checkConditions(spring, process, at)
  return stateOfChecked(spring, process)
}
