/** The force of a spring over its stroke: gas, closed air in the lower legs, coil, top-out, bumper, damper gas. */
import { refuse } from '../refusal/refusal.ts'
import type { AirSpring, LowerLegs, Spring } from './spring.ts'

export const standardAmbient = 101_325

/** How the gas is compressed: slowly everywhere, or fast from a stroke on. */
export interface Process {
  /** 1 slow … 1.4 fast (dry air) [-] */
  exponent?: number
  /** Slow to here, fast beyond [m]. */
  startStroke?: number
  /** Stroke at which the gauge was read [m]. */
  pressureAt?: number
  /** [Pa, absolute] */
  ambient?: number
}

export interface SpringState {
  /** Pushes the leg longer [N]. */
  force: number
  /** dF/dx [N/m] */
  rate: number
  /** Absolute [Pa]; null for a coil. */
  positivePressure: number | null
  negativePressure: number | null
  lowerPressures: number[]
}

export interface PreparedSpring {
  at(stroke: number): SpringState
  force(stroke: number): number
  /** End of the stroke that has a force [m]. */
  fullStroke: number
}

const circle = (diameter: number): number => (Math.PI / 4) * diameter * diameter

interface Gas {
  /** Absolute pressure at the stroke [Pa]. */
  pressure(stroke: number): number
  /** dp/dx [Pa/m] */
  slope(stroke: number): number
}

/** One closed chamber of volume volume + area·x: slow to `start`, polytropic from there. */
function closedChamber(pressure: number, volume: number, area: number, exponent: number, start: number): Gas {
  const product = pressure * volume
  const startVolume = volume + area * start
  const startPressure = product / startVolume
  return {
    pressure: (x) =>
      x <= start || exponent === 1
        ? product / (volume + area * x)
        : startPressure * (startVolume / (volume + area * x)) ** exponent,
    slope(x) {
      const k = x <= start ? 1 : exponent
      return (-k * area * this.pressure(x)) / (volume + area * x)
    },
  }
}

/** The positive chamber with a second one behind a floating piston. */
function sharedChamber(
  main: { pressure: number; volume: number; area: number },
  second: { pressure: number; volume: number },
  exponent: number,
  start: number,
): Gas {
  const { pressure, volume, area } = main
  const slow = (x: number): number => {
    const alone = (pressure * volume) / (volume - area * x)
    if (alone < second.pressure) return alone
    return (pressure * volume + second.pressure * second.volume) / (volume - area * x + second.volume)
  }
  const startPressure = slow(start)
  const joined = startPressure >= second.pressure
  const mainVolume = joined ? (pressure * volume) / startPressure : volume - area * start
  const secondVolume = joined ? (second.pressure * second.volume) / startPressure : second.volume
  const secondPressure = joined ? startPressure : second.pressure
  const root = (p: number, v: number): number => p ** (1 / exponent) * v
  const both = root(startPressure, mainVolume) + root(secondPressure, secondVolume)
  const at = (x: number): number => {
    if (x <= start || exponent === 1) return slow(x)
    const alone = startPressure * (mainVolume / (volume - area * x)) ** exponent
    if (!joined && alone < second.pressure) return alone
    return (both / (volume - area * x + second.volume)) ** exponent
  }
  return {
    pressure: at,
    slope(x) {
      const p = at(x)
      const shared = p >= second.pressure ? second.volume : 0
      const k = x <= start ? 1 : exponent
      return (k * area * p) / (volume - area * x + shared)
    },
  }
}

/** Strokes up to which the lower legs' air has room: (V_L − oil)/A_L, the least of the legs [m]. */
export function lowerLegRoom(lower: LowerLegs | undefined): number {
  if (!lower) return Number.POSITIVE_INFINITY
  return Math.min(
    ...lower.legs.map((leg) => {
      const area = circle(leg.stanchion ?? lower.stanchion) - circle(leg.rod ?? lower.rod)
      return ((leg.volume ?? lower.volume) - leg.oil) / area
    }),
  )
}

/** The end of the stroke that has a force: min(stroke, 0.999·room of the lower legs) [m]. */
export function fullStroke(spring: Spring): number {
  return Math.min(spring.stroke, 0.999 * lowerLegRoom(spring.lower))
}

/** Gas volume of the positive chamber at full length: V⁺ − spacers − oil [m³]. */
export function positiveGasVolume(spring: AirSpring): number {
  return spring.positiveVolume - (spring.spacers ?? 0) * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
}

/**
 * Makes a spring ready for many strokes at one pressure.
 *
 * F = (p⁺ − p_a)·A⁺ − (p⁻ − p_a)·A⁻ + Σ (p_L − p_a)·A_L − top-out + bumper + (p_g − p_a)·A_rod, or rate·(x + preload).
 *
 * @param spring    dimensions [SI]
 * @param pressure  gauge at `pressureAt` [Pa]; not used by a coil
 * @param process   exponent, startStroke, pressureAt, ambient
 * @throws Refusal when the positive chamber is no longer than the stroke
 * @source ideal gas, polytropic process
 */
export function prepareSpring(spring: Spring, pressure: number, process: Process = {}): PreparedSpring {
  const { exponent = 1, startStroke = 0, pressureAt = 0, ambient = standardAmbient } = process
  const end = fullStroke(spring)
  let positive: Gas | null = null
  let negative: Gas | null = null
  let [positiveArea, negativeArea] = [0, 0]
  if (spring.kind === 'air') {
    const volume = positiveGasVolume(spring)
    positiveArea = circle(spring.bore) - circle(spring.positiveShaft ?? 0)
    negativeArea = circle(spring.bore) - circle(spring.shaft)
    if (volume <= positiveArea * spring.stroke)
      refuse(
        'spring.stroke',
        'spring.chamber-too-short',
        `${(spring.stroke * 1000).toFixed(1)} mm`,
        `less than ${((volume / positiveArea) * 1000).toFixed(1)} mm, the length of the positive chamber`,
        'Check the positive volume, the spacers and the bore.',
      )
    const atRest = ((pressure + ambient) * (volume - positiveArea * pressureAt)) / volume
    positive = spring.second
      ? sharedChamber(
          { pressure: atRest, volume, area: positiveArea },
          { pressure: spring.second.pressure + ambient, volume: spring.second.volume },
          exponent,
          startStroke,
        )
      : closedChamber(atRest, volume, -positiveArea, exponent, startStroke)
    const kind = spring.negative ?? { kind: 'port' }
    const negativeVolume = spring.negativeVolume
    if (kind.kind === 'port') {
      const port = spring.equalisingStroke ?? 0
      const joined = spring.second
        ? sharedChamber(
            { pressure: atRest, volume, area: positiveArea },
            { pressure: spring.second.pressure + ambient, volume: spring.second.volume },
            1,
            0,
          ).pressure(port)
        : (atRest * volume) / (volume - positiveArea * port)
      const rest = (joined * (negativeVolume + negativeArea * port)) / negativeVolume
      negative = closedChamber(rest, negativeVolume, negativeArea, exponent, startStroke)
    } else if (kind.kind === 'valve')
      negative = closedChamber(kind.pressure + ambient, negativeVolume, negativeArea, exponent, startStroke)
  }
  const negativeCoil = spring.kind === 'air' && spring.negative?.kind === 'coil' ? spring.negative : null
  const lower = (spring.lower?.legs ?? []).map((leg) => {
    const outer = spring.lower
    const area = circle(leg.stanchion ?? outer?.stanchion ?? 0) - circle(leg.rod ?? outer?.rod ?? 0)
    const gas = (leg.volume ?? outer?.volume ?? 0) - leg.oil
    const closedAt = outer?.closedAt ?? ambient
    const rest = (closedAt * (gas - area * (outer?.closedStroke ?? 0))) / gas
    return { area, gas: closedChamber(rest, gas, -area, exponent, startStroke) }
  })
  const rodArea = spring.damperGas ? circle(spring.damperGas.rod) : 0
  const damperGas = spring.damperGas
    ? closedChamber(spring.damperGas.pressure + ambient, spring.damperGas.volume, -rodArea, exponent, startStroke)
    : null
  const at = (x: number): SpringState => {
    let [force, rate] = [0, 0]
    if (spring.kind === 'coil') {
      force += spring.rate * (x + (spring.preload ?? 0))
      rate += spring.rate
    }
    const positivePressure = positive ? positive.pressure(x) : null
    if (positive && positivePressure !== null) {
      force += (positivePressure - ambient) * positiveArea
      rate += positive.slope(x) * positiveArea
    }
    const negativePressure = negative ? negative.pressure(x) : null
    if (negative && negativePressure !== null) {
      force -= (negativePressure - ambient) * negativeArea
      rate -= negative.slope(x) * negativeArea
    }
    if (negativeCoil && x < negativeCoil.length) {
      force -= negativeCoil.rate * (negativeCoil.length - x)
      rate += negativeCoil.rate
    }
    const lowerPressures: number[] = []
    for (const leg of lower) {
      const p = leg.gas.pressure(x)
      lowerPressures.push(p)
      force += (p - ambient) * leg.area
      rate += leg.gas.slope(x) * leg.area
    }
    if (damperGas) {
      force += (damperGas.pressure(x) - ambient) * rodArea
      rate += damperGas.slope(x) * rodArea
    }
    const { topOut, bumper } = spring
    if (topOut && x < topOut.length) {
      force -= topOut.rate * (topOut.length - x)
      rate += topOut.rate
    }
    if (bumper) {
      const into = x - (spring.stroke - bumper.length)
      if (into > 0) {
        force += bumper.rate * bumper.length * (into / bumper.length) ** bumper.exponent
        rate += bumper.rate * bumper.exponent * (into / bumper.length) ** (bumper.exponent - 1)
      }
    }
    return { force, rate, positivePressure, negativePressure, lowerPressures }
  }
  return { at, force: (x) => at(x).force, fullStroke: end }
}
