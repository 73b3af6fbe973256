/** Real air by the published equation, and how far the ideal gas is off it. */
import reference from '@legwork/engine/reference/air-compressibility.json' with { type: 'json' }
import { describe, expect, it } from 'vitest'
import { idealGasBound } from './ideal-gas-bound.ts'

const gasConstant = 8.31451
const [reducingTemperature, reducingDensity] = [132.6312, 10_447.7]

/** Z = 1 + δ·∂α/∂δ of Lemmon et al. (2000), density in mol/m³. */
function compressibilityAt(temperature: number, density: number): number {
  const delta = density / reducingDensity
  const tau = reducingTemperature / temperature
  let sum = 1
  for (const [n = 0, i = 0, j = 0, l = 0] of reference.equation.terms) {
    const falls = l > 0 ? delta ** l : 0
    sum += n * delta ** i * tau ** j * Math.exp(-falls) * (i - l * falls)
  }
  return sum
}

/** Density [mol/m³] of the gas at a pressure [Pa]: Newton with a numeric slope, from the ideal gas. */
function densityAt(temperature: number, pressure: number): number {
  const of = (density: number) => density * gasConstant * temperature * compressibilityAt(temperature, density)
  let density = pressure / (gasConstant * temperature)
  for (let round = 0; round < 60; round += 1) {
    const step = density * 1e-6
    density -= ((of(density) - pressure) * step) / (of(density + step) - of(density))
  }
  return density
}

function compressibility(temperature: number, bar: number): number {
  return (bar * 1e5) / (densityAt(temperature, bar * 1e5) * gasConstant * temperature)
}

describe('dry air by Lemmon et al. 2000', () => {
  it.each(reference.printed.points)('%f K, %f MPa: %f mol/dm³ as printed', (kelvin, megapascal, printed, half) => {
    expect(Math.abs(densityAt(kelvin ?? 0, (megapascal ?? 0) * 1e6) / 1000 - (printed ?? 0))).toBeLessThanOrEqual(
      half ?? 0,
    )
  })

  it.each(Object.entries(reference.compressibility.at))('Z at %s K, as another program has it', (kelvin, row) => {
    reference.compressibility.pressuresBar.forEach((bar, index) => {
      expect(Math.abs(compressibility(Number(kelvin), bar) - (row[index] ?? 0)), `${bar} bar`).toBeLessThanOrEqual(6e-6)
    })
  })

  // Z = 1 + B·ρ + C·ρ² + …: both ends of the equation's slope at small densities.
  it.each(reference.virials.coefficients)('virial coefficients at %f K: %f cm³/mol, %f cm⁶/mol²', (kelvin, b, c) => {
    const density = 1
    const rest = (factor: number) => (compressibilityAt(kelvin ?? 0, density * factor) - 1) / (density * factor)
    const slope = (rest(2) - rest(1)) / density
    expect(Math.abs((rest(1) - slope * density) * 1e6 - (b ?? 0))).toBeLessThanOrEqual(0.0006)
    expect(Math.abs(slope * 1e12 - (c ?? 0))).toBeLessThanOrEqual(0.6)
  })

  it("Perry's table at 300 K agrees within 0.1 %", () => {
    const { pressuresBar, at300 } = reference.earlierTable
    pressuresBar.forEach((bar, index) => {
      expect(Math.abs(compressibility(300, bar) / (at300[index] ?? 0) - 1), `${bar} bar`).toBeLessThanOrEqual(0.001)
    })
  })
})

describe('the bound of the ideal gas', () => {
  const warm = [273.15, 283.15, 293.15, 303.15, 313.15, 323.15]
  const upTo = (end: number) => Array.from({ length: end }, (_, index) => index + 1)
  const ofOne = (temperatures: number[], end: number) =>
    Math.max(...temperatures.flatMap((kelvin) => upTo(end).map((bar) => Math.abs(1 - compressibility(kelvin, bar)))))
  const ofStroke = (temperatures: number[], filled: number, end: number) =>
    Math.max(
      ...temperatures.flatMap((kelvin) =>
        upTo(end)
          .filter((bar) => bar >= filled)
          .map((bar) => Math.abs(1 - compressibility(kelvin, end) / compressibility(kelvin, bar))),
      ),
    )
  const { fork, shock, cold } = idealGasBound

  it.each([
    ['fork, one state to 27 bar', ofOne(warm, 27), fork.one],
    ['fork, a stroke from 5 bar to 27', ofStroke(warm, 5, 27), fork.stroke],
    ['shock, one state to 80 bar', ofOne(warm, 80), shock.one],
    ['shock, a stroke from 10 bar to 73', ofStroke(warm, 10, 73), shock.stroke],
    ['fork at −15 °C, one state', ofOne([258.15], 27), cold.fork.one],
    ['fork at −15 °C, a stroke', ofStroke([258.15], 5, 27), cold.fork.stroke],
    ['shock at −15 °C, one state', ofOne([258.15], 80), cold.shock.one],
    ['shock at −15 °C, a stroke', ofStroke([258.15], 10, 73), cold.shock.stroke],
  ])('%s: %f is under the stated %f, by less than a tenth of it', (_what, worst, bound) => {
    expect(worst).toBeLessThanOrEqual(bound)
    expect(worst).toBeGreaterThan(0.9 * bound)
  })
})
