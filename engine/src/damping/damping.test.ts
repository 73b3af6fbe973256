import { describe, expect, it } from 'vitest'
import { dormandPrince, type OdeEvent, type Rates } from '../numerics/dormand-prince.ts'
import { Refusal } from '../refusal/refusal.ts'
import { clicksForDamping } from './clicks-for-damping.ts'
import { dampingRatio } from './damping-ratio.ts'

const near = (value: number, printed: number, half: number) =>
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(half)

/** One mass on a spring, pulled out to 1 and let go: its largest ways out on that side, one after the other. */
function peaks(mass: number, rate: number, damping: number, friction = 0, start = 1, until = 20): number[] {
  const found: number[] = [start]
  let state = Float64Array.of(start, 0)
  let time = 0
  let inward = true
  while (time < until && found.length < 12) {
    const against = inward ? friction : -friction
    const rates: Rates = (_time, now, out) => {
      out[0] = now[1] ?? 0
      out[1] = (against - rate * (now[0] ?? 0) - damping * (now[1] ?? 0)) / mass
    }
    const turns: OdeEvent = { value: (_t, now) => now[1] ?? 0, direction: inward ? 1 : -1, terminal: true }
    const ended = dormandPrince(rates, state, time, until, { relative: 1e-10, events: [turns] })
    if (ended.ended !== 'event') break
    time = ended.time
    state = Float64Array.of(ended.state[0] ?? 0, 0)
    inward = !inward
    if (inward) found.push(state[0] ?? 0)
  }
  return found
}

// S. S. Rao, Mechanical Vibrations, "Shock absorber for a motorcycle" (example 2.11 in the 5th edition): 200 kg, damped
// period 2 s, each half swing a quarter of the one before. Printed: δ 2.7726, ζ 0.4037, c_crit 1373.54, k 2358.2652,
// c 554.4981; his figures are rounded on the way, hence 5e-5 of the value.
describe('Rao, a motorcycle’s shock absorber', () => {
  const rate = 2358.2652
  const damping = 554.4981
  it('ratio and critical damping', () => {
    const { ratio, critical } = dampingRatio({ damping, rate, mass: 200 })
    near(ratio, 0.4037, 5e-5)
    near(critical, 1373.54, 5e-5 * 1373.54)
  })
  it('followed in time: successive ways out fall by 16, every 2 s', () => {
    const [first = 0, second = 0, third = 0] = peaks(200, rate, damping)
    near(Math.log(first / second), 2.7726, 5e-5 * 2.7726 + 5e-5)
    near(second / third, 16, 16 * 3e-4)
  })
})

// A worked example of one mass (8 kg, 5400 N/m, 40 N·s/m): c_crit 416, ζ 0.096, δ 0.607419, successive ratio
// 1.835686. The exact decrement is 0.6074185 and the ratio 1.8356864: within one of the last printed digit.
it('8 kg on 5400 N/m with 40 N·s/m', () => {
  const { ratio, critical } = dampingRatio({ damping: 40, rate: 5400, mass: 8 })
  near(critical, 416, 0.5)
  near(ratio, 0.096, 5e-4)
  const [first = 0, second = 0] = peaks(8, 5400, 40)
  near(Math.log(first / second), 0.607419, 1e-6)
  near(first / second, 1.835686, 1e-6)
})

// Logarithmic decrement δ = 2πζ/√(1 − ζ²). Ryerson AER 403, lecture 12, example 8.4: 0.85 and 0.45 one period (12 s)
// apart give δ 0.64 (0.635989) and ζ 0.101 (0.100706).
it('a decrement of 0.85 to 0.45 is a ratio of 0.1007', () => {
  const omega = (2 * Math.PI) / 12 / Math.sqrt(1 - 0.100706 ** 2)
  const [first = 0, second = 0] = peaks(1, omega ** 2, 2 * 0.100706 * omega, 0, 0.85, 30)
  near(first, 0.85, 1e-9)
  near(second, 0.45, 5e-6)
  near(
    dampingRatio({ damping: 2 * 0.100706 * omega * 1e4, rate: omega ** 2 * 1e4, mass: 1e4 / 10 }).ratio,
    0.3185,
    5e-4,
  )
})

// Coulomb friction: each half swing loses 2·F/k. Rao, example 2.14 (from memory, recomputed): 10 cm to 1 cm in five
// cycles of 2 s in all, so μ = 0.1132 with g = 9.81: the period is 0.4 s and 4·μ·g/ω² is 18 mm a cycle.
it('dry friction takes 2·F/k a half swing', () => {
  const omega = (2 * Math.PI) / 0.4
  const out = peaks(1, omega ** 2, 0, 0.113184 * 9.81, 0.1, 2.001)
  expect(out).toHaveLength(6)
  near(out[5] ?? 0, 0.01, 5e-6)
})

// Barton & Fieldhouse, Automotive Chassis Engineering (Springer 2018), p. 209: 317.5 kg on 22 kN/m, 45.4 kg on 192 kN/m:
// 7.87 and 68.73 rad/s as printed; exact roots 7.878634 and 68.708623. A motion begun in one mode keeps its period.
it.each([7.878634, 68.708623])('two masses in their own mode, %f rad/s', (omega) => {
  const [body, wheel, spring, tyre] = [317.5, 45.4, 22_000, 192_000]
  const shape = (spring - body * omega ** 2) / spring
  const rates: Rates = (_time, now, out) => {
    const [up = 0, rise = 0, low = 0, climb = 0] = now
    out[0] = rise
    out[1] = (spring * (low - up)) / body
    out[2] = climb
    out[3] = (spring * (up - low) - tyre * low) / wheel
  }
  // In the first one the wheel moves 0.104 of the body (as printed).
  if (omega < 10) near(shape, 0.104, 5e-4)
  const period = (2 * Math.PI) / omega
  const { state } = dormandPrince(rates, Float64Array.of(1, 0, shape, 0), 0, period, { relative: 1e-10 })
  near(state[0] ?? 0, 1, 1e-5)
  near((state[2] ?? 0) / shape, 1, 1e-4)
})

// The same book, p. 213: a wheel of 40 kg between 20.63 and 300 kN/m hops at 14.25 Hz.
it('a wheel between spring and tyre: 14.25 Hz', () => {
  const stop: OdeEvent = { value: (_time, now) => now[1] ?? 0, direction: -1, terminal: true }
  const rates: Rates = (_time, now, out) => {
    out[0] = now[1] ?? 0
    out[1] = (-(20_630 + 300_000) * (now[0] ?? 0)) / 40
  }
  const { time } = dormandPrince(rates, Float64Array.of(1, 0), 0, 1, { relative: 1e-10, events: [stop] })
  near(1 / time, 14.25, 0.005)
})

describe('clicks for a damping', () => {
  it('finds the law the settings were made by', () => {
    const settings = [0, 4, 7, 15].map((clicks) => ({ clicks, damping: 1500 * 0.95 ** clicks }))
    const { clicks, band, closed, perClick } = clicksForDamping({ settings, wanted: 1500 * 0.95 ** 9.5 })
    near(clicks, 9.5, 1e-9)
    near(closed, 1500, 1e-6)
    near(perClick, 0.05, 1e-12)
    expect(band?.[0]).toBeCloseTo(9.5, 6)
  })

  // By hand: ln c = 7 − 0.05·n with 0.01·(1, −2, 1) added at n = 0, 10, 20 leaves the line where it is; s = 0.01·√6 with
  // one degree of freedom, t = 6.3138 (GUM table G.2: 6.31), so at n = 10 the half band is 6.3138·s/0.05·√(1/3).
  it('band by Student’s t', () => {
    const settings = [1, -2, 1].map((off, index) => ({
      clicks: 10 * index,
      damping: Math.exp(7 - 0.5 * index + 0.01 * off),
    }))
    const { clicks, band, closed } = clicksForDamping({ settings, wanted: Math.exp(6.5) })
    near(clicks, 10, 1e-9)
    near(closed, Math.exp(7), 1e-6)
    const half = ((6.3138 * 0.01 * Math.sqrt(6)) / 0.05) * Math.sqrt(1 / 3)
    near((band?.[1] ?? 0) - clicks, half, 1e-4)
    near(clicks - (band?.[0] ?? 0), half, 1e-4)
  })

  it('two settings leave nothing to judge by', () => {
    const settings = [0, 10].map((clicks) => ({ clicks, damping: 900 - 40 * clicks }))
    expect(clicksForDamping({ settings, wanted: 700 }).band).toBeNull()
  })

  it.each([
    ['settings', 'wrong-count', [{ clicks: 0, damping: 900 }], 700],
    ['settings', 'does-not-fit', [3, 3].map((clicks) => ({ clicks, damping: 900 })), 700],
    ['settings', 'no-answer', [0, 5].map((clicks) => ({ clicks, damping: 900 + clicks })), 700],
    [
      'settings',
      'no-answer',
      [100, 101].map((clicks) => ({ clicks, damping: 1e5 * 10 ** (-5 * (clicks - 100)) })),
      700,
    ],
    ['wanted', 'no-answer', [0, 5].map((clicks) => ({ clicks, damping: 900 - clicks })), 950],
    ['settings[1].clicks', 'out-of-range', [0, -5].map((clicks) => ({ clicks, damping: 900 - clicks })), 700],
  ])('refuses %s, %s', (field, code, settings, wanted) => {
    try {
      clicksForDamping({ settings, wanted })
      expect.unreachable()
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      expect(error.errors[0]).toMatchObject({ field, code })
    }
  })
})
