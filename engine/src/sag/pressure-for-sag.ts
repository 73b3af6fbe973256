/** The pressure that gives a wanted sag. */
import { refuse } from '../refusal/refusal.ts'
import type { AirSpring } from '../spring/spring.ts'
import { fullStroke, prepareSpring, standardAmbient } from '../spring/spring-force.ts'
import { sag } from './sag.ts'

/**
 * Slowly, F at a stroke is linear in the absolute pressure at full length, so two evaluations give the answer exactly,
 * but for a second chamber, whose piston may start to move: there it is repeated until it stands.
 *
 * @param spring  an air spring [SI]
 * @param input   load along the leg [N]; sag as a fraction of the stroke (0 … 1); ambient [Pa]
 * @returns gauge pressure at full length [Pa], stroke [m]
 * @throws Refusal for an answer below 0 gauge, above `maxPressure`, or a sag beyond the full stroke
 */
export function pressureForSag(
  spring: AirSpring,
  input: { load: number; sag: number; ambient?: number },
): { pressure: number; stroke: number } {
  const { load, ambient = standardAmbient } = input
  const stroke = input.sag * spring.stroke
  if (!(input.sag > 0) || stroke >= fullStroke(spring))
    refuse(
      'sag',
      'sag.outside-stroke',
      `${(input.sag * 100).toFixed(1)} %`,
      `above 0 and below ${((fullStroke(spring) / spring.stroke) * 100).toFixed(1)} % of the stroke`,
      'Give the wanted sag as a share of the stroke, e.g. 0.2.',
    )
  const forceAt = (pressure: number): number => prepareSpring(spring, pressure, { ambient }).force(stroke)
  let [low, high] = [0, 1e6]
  let pressure = 0
  for (let i = 0; i < 60; i++) {
    const [fLow, fHigh] = [forceAt(low), forceAt(high)]
    pressure = low + ((load - fLow) * (high - low)) / (fHigh - fLow)
    if (Math.abs(pressure - high) < 1e-6) break
    low = high
    high = pressure
  }
  if (pressure < 0)
    refuse(
      'load',
      'pressure.below-zero',
      `${load.toFixed(1)} N`,
      `at least ${forceAt(0).toFixed(1)} N, what the spring pushes there without any pressure`,
      'Ask for more sag, or check the load.',
    )
  if (spring.maxPressure !== undefined && pressure > spring.maxPressure) {
    const there = sag(spring, { pressure: spring.maxPressure, load, ambient })
    refuse(
      'spring.maxPressure',
      'pressure.above-maximum',
      `${(spring.maxPressure / 1e5).toFixed(2)} bar, and ${(pressure / 1e5).toFixed(2)} bar would be needed`,
      'no less than the pressure that is needed',
      `The maximum would give ${(there.fraction * 100).toFixed(1)} % sag. Never fill above it.`,
    )
  }
  return { pressure, stroke }
}
