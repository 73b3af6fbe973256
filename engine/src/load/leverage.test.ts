/** Hand calculations of the three forms of a leverage, and where they end. */
import { describe, expect, it } from 'vitest'
import { bothEnds } from '../sag/both-ends.ts'
import { leverageAt, wheelTravel } from './leverage.ts'
import { shockLoad } from './shock-load.ts'

const straight = { start: 3, end: 2, stroke: 0.06 }
const table = [
  { stroke: 0, leverage: 3 },
  { stroke: 0.02, leverage: 2.8 },
  { stroke: 0.06, leverage: 2.2 },
]

describe('leverage', () => {
  // Half way 2.5; travel ∫(3 − s/0.06)ds to 30 mm = 90 − 7.5 = 82.5 mm.
  it('straight over the stroke', () => {
    expect(leverageAt(straight, 0.03)).toBeCloseTo(2.5, 12)
    expect(wheelTravel(straight, 0.03)).toBeCloseTo(0.0825, 12)
  })
  // Straight between lines: at 40 mm 2.5; travel 20·(3 + 2.8)/2 + 20·(2.8 + 2.5)/2 = 58 + 53 = 111 mm.
  it('by a table, straight between its lines', () => {
    expect(leverageAt(table, 0.04)).toBeCloseTo(2.5, 12)
    expect(wheelTravel(table, 0.04)).toBeCloseTo(0.111, 12)
  })
  // Beyond the table 2.2 goes on: 58 + 40·(2.8 + 2.2)/2 + 5·2.2 = 169 mm at 65 mm.
  it("keeps a table's last value beyond its end", () => {
    expect(leverageAt(table, 0.065)).toBe(2.2)
    expect(wheelTravel(table, 0.065)).toBeCloseTo(0.169, 12)
  })

  it('refuses a stroke beyond what a straight leverage was given for', () => {
    const asked = { rearSprungMass: 55, leverage: straight, stroke: 0.07 }
    expect(() => shockLoad(asked)).toThrow('stroke is 70 mm; it must be at most leverage.stroke (60 mm)')
    const coil = { kind: 'coil', rate: 50_000, stroke: 0.065 } as const
    const ends = { fork: { spring: { ...coil, stroke: 0.15 }, load: 300 }, shock: { spring: coil, load: 500 } }
    const bike = { ...ends, wheelbase: 1.2, rearCentre: 0.43, headAngle: 65, leverage: straight }
    expect(() => bothEnds(bike)).toThrow('shock.spring.stroke is 65 mm; it must be at most leverage.stroke (60 mm)')
  })
})
