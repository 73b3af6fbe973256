import areas from '@legwork/engine/reference/stress-areas.json' with { type: 'json' }
import stripping from '@legwork/engine/reference/thread-stripping.json' with { type: 'json' }
import { describe, expect, it } from 'vitest'
import { Refusal } from '../refusal/refusal.ts'
import { bolt } from './bolt.ts'
import { stressArea } from './thread.ts'
import { threadStrip } from './thread-strip.ts'
import { wrenchChoice } from './wrench-choice.ts'
import { wrenchSetting } from './wrench-setting.ts'

const inch = 0.0254
const inchPound = 0.1129848290276167

describe('wrench with an adapter', () => {
  // FAA AC 43.13-1B, form of figure 7-2 (figure number from memory): 135 in·lb, 10 in, 1.5 in.
  it('in line: 117.39 in·lb', () => {
    const { set } = wrenchSetting({ wanted: 135 * inchPound, wrenchLength: 10 * inch, adapterLength: 1.5 * inch })
    expect(Math.abs(set / inchPound - 117.39)).toBeLessThanOrEqual(0.005)
  })
  it('folded back: 158.82 in·lb', () => {
    const question = { wanted: 135 * inchPound, wrenchLength: 10 * inch, adapterLength: 1.5 * inch, adapterAngle: 180 }
    expect(Math.abs(wrenchSetting(question).set / inchPound - 158.82)).toBeLessThanOrEqual(0.005)
  })
  // An aircraft maintenance manual: 30 ft·lb, 1 ft lever, 0.25 ft adapter: 24 ft·lb.
  it('24 ft·lb for 30 at a quarter of the lever', () => {
    expect(wrenchSetting({ wanted: 30, wrenchLength: 1, adapterLength: 0.25 }).set).toBeCloseTo(24, 10)
  })
  // NAVAIR NRTC 14315, figure 3-45: 100 in·lb, 12 in + 6 in: 66.7 in·lb.
  it('66.7 in·lb for 100 at half of the lever', () => {
    const { set } = wrenchSetting({ wanted: 100 * inchPound, wrenchLength: 12 * inch, adapterLength: 6 * inch })
    expect(Math.abs(set / inchPound - 66.7)).toBeLessThanOrEqual(0.05)
  })
  // US Army TM 9-254: square off needs no correction.
  it('square off: as wanted', () => {
    expect(wrenchSetting({ wanted: 5, wrenchLength: 0.2, adapterLength: 0.05, adapterAngle: 90 }).set).toBeCloseTo(
      5,
      12,
    )
  })
  it('refuses an adapter folded back as long as the wrench', () => {
    const question = { wanted: 5, wrenchLength: 0.2, adapterLength: 0.2, adapterAngle: 180 }
    expect(() => wrenchSetting(question)).toThrow(Refusal)
  })
})

describe('wrench choice', () => {
  // ISO 6789:2003: type II class A ±6 % to 10 N·m, ±4 % above, inside the stated range only.
  const wrenches = [
    { id: 'small', low: 2, high: 10, class: 0.06, length: 0.2 },
    { id: 'large', low: 10, high: 60, class: 0.04, length: 0.35 },
    { id: 'middle', low: 4, high: 20, class: 0.06, length: 0.25 },
  ]
  it('takes the only one in range', () => {
    expect(wrenchChoice({ wanted: 3, wrenches })).toMatchObject({
      best: { id: 'small' },
      refused: [{ id: 'large' }, { id: 'middle' }],
    })
  })
  it('takes the smaller range of equal classes', () => {
    expect(wrenchChoice({ wanted: 5, wrenches }).best?.id).toBe('small')
  })
  it('takes the smaller class first', () => {
    const { best } = wrenchChoice({ wanted: 15, wrenches })
    expect(best?.id).toBe('large')
    expect(best?.set).toBeCloseTo(15, 12)
  })
  it('says null where none can', () => {
    expect(wrenchChoice({ wanted: 90, wrenches }).best).toBeNull()
  })
})

// ISO 898-1: half of the third figure.
it.each(areas.areas)('M%f × %f has %f mm²', (diameter = 0, pitch = 0, printed = 0) => {
  const half = 10 ** (Math.floor(Math.log10(printed)) - 2) / 2
  expect(Math.abs(stressArea(diameter / 1000, pitch / 1000) * 1e6 - printed)).toBeLessThanOrEqual(half * 1.001)
})

it.each(areas.recomputed.rows)('M%f × %f has %f mm², to three decimals', (diameter = 0, pitch = 0, area = 0) => {
  expect(Math.abs(stressArea(diameter / 1000, pitch / 1000) * 1e6 - area)).toBeLessThanOrEqual(0.0005)
})

// ISO 898-1: a proof load is the stress area times the proof stress of its class, printed to three figures, cut rather than
// rounded: within one of the last.
it.each(areas.proof.rows)('M%f × %f carries its proof loads', (diameter = 0, pitch = 0, ...loads) => {
  loads.forEach((load, index) => {
    const worked = stressArea(diameter / 1000, pitch / 1000) * (areas.proof.stresses[index] ?? 0) * 1e6
    expect(Math.abs(worked - load), `${load} N`).toBeLessThanOrEqual(10 ** (Math.floor(Math.log10(load)) - 2))
  })
})

// Five figures printed: within one of the last.
it.each(stripping.areas)(
  'M%f × %f strips over %f and %f mm²',
  (diameter = 0, pitch = 0, external = 0, internal = 0) => {
    const shearStrength = { external: 1e9, internal: 1e9 }
    const { area } = threadStrip({
      diameter: diameter / 1000,
      pitch: pitch / 1000,
      engagement: diameter / 1000,
      shearStrength,
    })
    const half = (value: number) => 10 ** (Math.floor(Math.log10(value)) - 4)
    expect(Math.abs(area.external * 1e6 - external)).toBeLessThanOrEqual(half(external))
    expect(Math.abs(area.internal * 1e6 - internal)).toBeLessThanOrEqual(half(internal))
  },
)

// Hand calculation: F = T/(K·d) = 16/(0.2·0.008) = 10 kN; A = 36.609 mm²; σ = 273.2 MPa; d_s = 6.8273 mm,
// τ = 8·(d_s/2)/(π/32·d_s⁴) = 128/(π·d_s³) = 128.03 MPa; σ_v = √(273.2² + 3·128.03²) = 351.9 MPa.
it('stress of an M8 at 16 N·m', () => {
  const worked = bolt({ torque: 16, diameter: 0.008, pitch: 0.00125, nutFactor: [0.2, 0.2], yield: 640e6 })
  expect(worked.stress[0] / 1e6).toBeCloseTo(273.2, 0)
  expect(worked.misesStress[0] / 1e6).toBeCloseTo(351.9, 0)
  expect(worked.shareOfYield?.[0]).toBeCloseTo(0.55, 2)
})
