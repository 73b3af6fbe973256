import { drawnOut, mainPressure, type SpringState, squeezed } from './spring-state.ts'

/** Force and its slope at a stroke; handed in, so that a solver's loop allocates nothing. */
export interface ForceAndRate {
  force: number
  rate: number
}

/** Volume the main gas, or both gases together, fill at a stroke: what its slope hangs on. */
function workingVolume(state: SpringState, x: number, pressure: number): number {
  const { main, second, exponent } = state
  const volume = main.volume - main.area * x
  if (second.area === 0) return volume
  const rest = second.pressure * (second.at / second.volume) ** exponent
  return pressure > rest ? volume + second.volume : volume
}

/**
 * Force that pushes the leg longer, and its slope, without friction:
 * (P_p − P_amb)·A_p − (P_n − P_amb)·A_n + Σ(P_L − P_amb)·A_L + (P_g − P_amb)·A_rod + rate·(x + preload)
 * − negative coil − top-out + bumper.
 *
 * @param state  a spring made ready
 * @param x      stroke [m], 0 … fullStroke
 * @param out    takes force [N] and rate [N/m]
 * @source force balance on the leg; ideal gas
 */
export function forceAt(state: SpringState, x: number, out: ForceAndRate): void {
  const { ambient, exponent, main, negative, damper, lower } = state
  let force = 0
  let rate = state.coilRate
  if (state.coilRate !== 0) force = state.coilRate * (x + state.preload)
  if (main.area !== 0) {
    const pressure = mainPressure(state, x)
    force += (pressure - ambient) * main.area
    rate += (exponent * pressure * main.area * main.area) / workingVolume(state, x, pressure)
  }
  if (negative.area !== 0) {
    const pressure = drawnOut(negative, x, exponent)
    force -= (pressure - ambient) * negative.area
    rate += (exponent * pressure * negative.area * negative.area) / (negative.volume + negative.area * x)
  }
  for (let index = 0; index < lower.length; index += 1) {
    const leg = lower[index]
    if (leg === undefined) break
    const pressure = squeezed(leg, x, exponent)
    force += (pressure - ambient) * leg.area
    rate += (exponent * pressure * leg.area * leg.area) / (leg.volume - leg.area * x)
  }
  if (damper.area !== 0) {
    const pressure = squeezed(damper, x, exponent)
    force += (pressure - ambient) * damper.area
    rate += (exponent * pressure * damper.area * damper.area) / (damper.volume - damper.area * x)
  }
  if (x < state.negativeLength) {
    force -= state.negativeRate * (state.negativeLength - x)
    rate += state.negativeRate
  }
  if (x < state.topOutLength) {
    force -= state.topOutRate * (state.topOutLength - x)
    rate += state.topOutRate
  }
  const into = x - (state.stroke - state.bumperLength)
  if (into > 0 && state.bumperRate !== 0) {
    const share = into / state.bumperLength
    force += state.bumperRate * state.bumperLength * share ** state.bumperExponent
    rate += state.bumperRate * state.bumperExponent * share ** (state.bumperExponent - 1)
  }
  out.force = force
  out.rate = rate
}

const scratch: ForceAndRate = { force: 0, rate: 0 }

/** The force alone [N]. */
export function force(state: SpringState, x: number): number {
  forceAt(state, x, scratch)
  return scratch.force
}

/**
 * Stroke at which the spring holds a force, between two strokes: Newton with the closed slope, kept inside a bracket
 * that halves whenever Newton is slow. The force rises with the stroke everywhere, so there is one answer.
 *
 * @param state   a spring made ready
 * @param wanted  force [N]; force(low) ≤ wanted ≤ force(high)
 * @returns stroke [m], within 1e-13 m
 * @source safeguarded Newton–Raphson, e.g. Numerical Recipes 3rd ed., section 9.4
 */
export function strokeAtForce(state: SpringState, wanted: number, low: number, high: number): number {
  let left = low
  let right = high
  let x = low + 0.25 * (high - low)
  let step = right - left
  let before = step
  for (let round = 0; round < 120; round += 1) {
    forceAt(state, x, scratch)
    const miss = scratch.force - wanted
    if (miss === 0) return x
    if (miss < 0) left = x
    else right = x
    const newton = miss / scratch.rate
    const next = x - newton
    before = step
    if (next <= left || next >= right || Math.abs(2 * newton) > Math.abs(before)) {
      step = (right - left) / 2
      x = left + step
    } else {
      step = newton
      x = next
    }
    if (Math.abs(step) < 1e-13) return x
  }
  return x
}
