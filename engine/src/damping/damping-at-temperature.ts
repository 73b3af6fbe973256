import { viscosity } from '../oil/viscosity.ts'
import type { ViscosityPoint } from '../oil/viscosity-temperature.ts'
import type { Kelvin, SquareMetrePerSecond } from '../quantities/si.ts'
import { stopAt, temperatureWithin, within } from '../refusal/found.ts'
import { Refusal } from '../refusal/refusal.ts'
import { dampingWithin } from './return-time.ts'

/** linear·x′ + orifice·x′·|x′| [N·s/m, N·s²/m²]. */
export interface DampingParts {
  readonly linear: number
  readonly orifice: number
}

export type OilKnown =
  | { readonly points: readonly ViscosityPoint[] }
  | { readonly viscosity40: SquareMetrePerSecond; readonly viscosityIndex: number }

export interface TemperatureQuestion {
  readonly damping: DampingParts
  readonly oil: OilKnown
  /** The oil's temperature at which the damping holds. */
  readonly from: Kelvin
  readonly to: Kelvin
  /** Share by which the oil's volume grows [1/K]; 0.0007 by default, a usual figure of mineral oil. */
  readonly expansion?: number
}

export interface DampingThere {
  damping: { linear: number; orifice: number }
  /** There over here: of the straight part, and of the part with the speed's square. */
  factor: { linear: number; orifice: number }
  /** Kinematic. */
  viscosity: { from: SquareMetrePerSecond; to: SquareMetrePerSecond }
}

/** Kinematic viscosity at a temperature that is called otherwise here. */
function viscosityAt(oil: OilKnown, temperature: Kelvin, name: 'from' | 'to'): SquareMetrePerSecond {
  try {
    return viscosity({ ...oil, temperature }).viscosity
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    const place = (field: string) => (field === 'temperature' ? name : `oil.${field}`)
    throw new Refusal(error.errors.map((one) => ({ ...one, field: place(one.field) })))
  }
}

/**
 * Damping with the oil at another temperature: the part straight in the speed is laminar and goes with the dynamic viscosity
 * ν·ρ, the part with the speed's square comes of orifices and goes with ρ alone.
 *
 * ρ there/ρ here = 1/(1 + expansion·(to − from)); linear·ν_to·ρ_to/(ν_from·ρ_from), orifice·ρ_to/ρ_from.
 *
 * @param question  damping [N·s/m, N·s²/m²]; oil by two points [K, m²/s] or by 40 °C [m²/s] and index; from, to [K];
 *                  expansion 0 … 0.002 1/K
 * @returns damping there, its factors [-], viscosities [m²/s]
 * @throws Refusal naming every field that can't be; `no-answer` where the oil's line ends before a temperature
 * @source Hagen and Poiseuille for the straight part, M. G. Rabie, Fluid Power Engineering (2009), 2.19 and 2.35; ASTM D341-20
 * @example dampingAtTemperature({ damping: { linear: 1000, orifice: 0 }, oil: { points: [{ temperature: 313.15, viscosity: 32e-6 }, { temperature: 373.15, viscosity: 5.4e-6 }] }, from: 313.15, to: 353.15, expansion: 0 }).damping.linear // 266.66
 */
export function dampingAtTemperature(question: TemperatureQuestion): DampingThere {
  const { damping, oil, from, to, expansion = 0.0007 } = question
  let found = dampingWithin(null, 'damping.linear', damping.linear)
  const orifice = 'Give the force over the square of the speed, in N·s²/m²; 0 without one.'
  found = within(found, 'damping.', 'orifice', damping.orifice, 'number', 0, 1e5, orifice)
  found = temperatureWithin(found, '', 'from', from)
  found = temperatureWithin(found, '', 'to', to)
  found = within(found, '', 'expansion', expansion, 'number', 0, 0.002, 'Take it from the data sheet, about 0.0007.')
  stopAt(found)
  const there = { from: viscosityAt(oil, from, 'from'), to: viscosityAt(oil, to, 'to') }
  const density = 1 / (1 + expansion * (to - from))
  const factor = { linear: (there.to / there.from) * density, orifice: density }
  return {
    damping: { linear: damping.linear * factor.linear, orifice: damping.orifice * factor.orifice },
    factor,
    viscosity: there,
  }
}
