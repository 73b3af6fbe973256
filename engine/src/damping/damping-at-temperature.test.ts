import { describe, expect, it } from 'vitest'
import { Refusal } from '../refusal/refusal.ts'
import { dampingAtTemperature, type TemperatureQuestion } from './damping-at-temperature.ts'

const kelvin = (celsius: number) => celsius + 273.15
const question: TemperatureQuestion = {
  damping: { linear: 1000, orifice: 150 },
  oil: {
    points: [
      { temperature: kelvin(40), viscosity: 32e-6 },
      { temperature: kelvin(100), viscosity: 5.4e-6 },
    ],
  },
  from: kelvin(40),
  to: kelvin(80),
}
const refusedBy = (work: () => unknown) => {
  try {
    work()
  } catch (error) {
    if (error instanceof Refusal) return error.errors.map(({ field, code }) => `${field} ${code}`)
    throw error
  }
  return []
}

describe('damping with the oil at another temperature', () => {
  // ASTM D341, a worked example: 32 mm²/s at 40 °C and 5.4 at 100 °C are 8.5 at 80 °C. By hand: 40 K at 0.0007 1/K thin the oil
  // to 1/1.028 of its density; straight part ×8.5/32/1.028, the other ×1/1.028.
  it('goes with ν·ρ and with ρ', () => {
    const { damping, factor, viscosity } = dampingAtTemperature(question)
    expect(viscosity.from * 1e6).toBeCloseTo(32, 9)
    expect(viscosity.to * 1e6).toBeCloseTo(8.5, 1)
    expect(factor.linear).toBeCloseTo(8.5332 / 32 / 1.028, 4)
    expect(factor.orifice).toBeCloseTo(1 / 1.028, 12)
    expect(damping.linear).toBeCloseTo(1000 * factor.linear, 9)
    expect(damping.orifice).toBeCloseTo(150 / 1.028, 9)
  })
  it('back again is where it began, and the same temperature changes nothing', () => {
    const there = dampingAtTemperature({ ...question, expansion: 0 })
    const back = dampingAtTemperature({
      ...question,
      damping: there.damping,
      from: question.to,
      to: question.from,
      expansion: 0,
    })
    expect(back.damping.linear).toBeCloseTo(1000, 8)
    expect(back.damping.orifice).toBeCloseTo(150, 9)
    expect(dampingAtTemperature({ ...question, to: question.from }).damping).toEqual(question.damping)
  })
  // Common practice, no source: after three minutes of cycling by hand a leg returns 15–30 % faster. With an oil of 15 mm²/s at
  // 40 °C that is a warm-up of some 4 to 9 K from 20 °C.
  it('a damper oil some 4 to 9 K warmer damps 15 to 30 % less', () => {
    const oil = {
      points: [
        { temperature: kelvin(40), viscosity: 15e-6 },
        { temperature: kelvin(100), viscosity: 3.6e-6 },
      ],
    }
    const lessBy = (warmer: number) =>
      1 - dampingAtTemperature({ ...question, oil, from: kelvin(20), to: kelvin(20 + warmer) }).factor.linear
    expect(lessBy(4)).toBeCloseTo(0.15, 1)
    expect(lessBy(9)).toBeCloseTo(0.3, 1)
  })
  it('takes 40 °C and index instead of two points', () => {
    const oil = { viscosity40: 15e-6, viscosityIndex: 150 }
    const cold = dampingAtTemperature({ ...question, oil, from: kelvin(20), to: kelvin(-5) })
    expect(cold.factor.linear).toBeGreaterThan(2)
    expect(cold.factor.orifice).toBeCloseTo(1 / (1 - 25 * 0.0007), 12)
  })
  it('names its own fields where something can’t be', () => {
    expect(refusedBy(() => dampingAtTemperature({ ...question, to: 20, damping: { linear: -1, orifice: 0 } }))).toEqual(
      ['damping.linear out-of-range', 'to unlikely-temperature'],
    )
    const oil = { points: [{ temperature: kelvin(40), viscosity: 1 }] }
    expect(refusedBy(() => dampingAtTemperature({ ...question, oil }))).toEqual(['oil.points wrong-count'])
    expect(refusedBy(() => dampingAtTemperature({ ...question, expansion: 1 }))).toEqual(['expansion out-of-range'])
  })
})
