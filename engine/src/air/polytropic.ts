import type { CubicMetre, Pascal } from '../quantities/si.ts'
import { stopAt, within } from '../refusal/found.ts'

/**
 * Gas pressure after a slow or fast change of volume: p₂ = p₁·(V₁/V₂)^k.
 *
 * @param pressure  before [Pa, absolute], 0 … 100 MPa
 * @param from      volume before [m³], 0.001 ml … 1 m³
 * @param to        volume after [m³], 0.001 ml … 1 m³
 * @param exponent  1 slow (isothermal) … 1.4 fast (adiabatic, dry air) [-]
 * @returns pressure after [Pa, absolute]
 * @throws Refusal naming the field, its value and what is allowed
 * @source ideal gas, polytropic process; its bound: idealGasBound
 * @example polytropicPressure(1e6, 2e-4, 1e-4, 1) // 2e6
 */
export function polytropicPressure(pressure: Pascal, from: CubicMetre, to: CubicMetre, exponent: number): Pascal {
  let found = within(null, '', 'pressure', pressure, 'pressure', 0, 1e8, 'Give an absolute pressure.')
  found = within(found, '', 'from', from, 'volume', 1e-9, 1, 'Give the volume before.')
  found = within(found, '', 'to', to, 'volume', 1e-9, 1, 'Give the volume after.')
  found = within(found, '', 'exponent', exponent, 'number', 1, 1.4, 'Use 1 for slow, 1.3 for riding.')
  stopAt(found)
  return pressure * (from / to) ** exponent
}
