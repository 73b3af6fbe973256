/** What can't be about the negative chamber and the damper's gas. */
import { figure } from '../quantities/kinds.ts'
import { type Found, refuse, within, withinIfGiven } from '../refusal/found.ts'
import { ringArea } from './dimensions.ts'
import type { AirSpring, DamperGas } from './spring.ts'

/** Gauge pressures up to 200 bar. */
export const largestPressure = 2e7

/** What can't be about how the negative side is made. */
export function checkNegative(found: Found, at: string, spring: AirSpring): Found {
  const { negative } = spring
  const kind = negative?.kind ?? 'port'
  let checked = found
  if (kind === 'port' || kind === 'valve') {
    const next = 'Give the negative chamber at full length, from the sheet or measured with oil.'
    checked = within(checked, at, 'negativeVolume', spring.negativeVolume, 'volume', 1e-7, 0.01, next)
  }
  if (kind === 'port') {
    const next = 'Give the stroke at which the port joins both chambers.'
    checked = withinIfGiven(checked, at, 'equalisingStroke', spring.equalisingStroke, 'length', 0, spring.stroke, next)
  }
  if (negative?.kind === 'valve') {
    const next = 'Give what the gauge shows at full length.'
    checked = within(checked, at, 'negative.pressure', negative.pressure, 'pressure', 0, largestPressure, next)
  }
  if (negative?.kind === 'coil') {
    checked = within(checked, at, 'negative.rate', negative.rate, 'rate', 0, 1e7, 'Give the rate of the negative coil.')
    checked = within(
      checked,
      at,
      'negative.length',
      negative.length,
      'length',
      0,
      spring.stroke,
      'Give the stroke over which it works.',
    )
  }
  return checked
}

/** What can't be about gas behind the damper's oil. */
export function checkDamperGas(found: Found, at: string, gas: DamperGas, stroke: number): Found {
  let checked = within(
    found,
    at,
    'damperGas.pressure',
    gas.pressure,
    'pressure',
    0,
    largestPressure,
    'Give the fill at full length.',
  )
  checked = within(
    checked,
    at,
    'damperGas.volume',
    gas.volume,
    'volume',
    1e-7,
    0.01,
    'Give the gas volume at full length.',
  )
  checked = within(checked, at, 'damperGas.rod', gas.rod, 'length', 0.001, 0.1, 'Measure the damper rod.')
  if (checked !== found) return checked
  const swept = ringArea(gas.rod, 0) * stroke
  if (gas.volume > swept) return found
  const allowed = `larger than what the rod displaces over the stroke (${figure(swept, 'volume')})`
  return refuse(
    found,
    `${at}damperGas.volume`,
    'does-not-fit',
    figure(gas.volume, 'volume'),
    allowed,
    'Check the rod and the gas volume.',
  )
}
