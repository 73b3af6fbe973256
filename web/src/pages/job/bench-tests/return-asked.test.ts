import { returnTime, type Spring } from '@legwork/engine'
import type { ReleasedAt } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { clicksFor, dampingAt, wantedDamping } from './return-asked.ts'

const coil: Spring = { kind: 'coil', rate: 9000, stroke: 0.15 }
const setting = { spring: coil, pressure: null, mass: 3, friction: 15 }
const timed = (time: number): ReleasedAt => ({
  clicks: 8,
  from: 0.11,
  to: 0.01,
  readings: [],
  time,
  spread: null,
  resolution: 1 / 240,
})

describe('damping out of a timed return', () => {
  it('is the one whose own return takes that time', () => {
    const { time } = returnTime(coil, { mass: 3, friction: 15, from: 0.11, to: 0.01, damping: 800 })
    const found = dampingAt(timed(time), setting)
    expect(found.ok && found.found.damping).toBeCloseTo(800, 0)
  })

  it('says why where no damping gives it', () => {
    // Undamped and without friction it swings back in about a quarter of 2·π·√(3/9000) = 0.115 s: never in 5 ms.
    const found = dampingAt(timed(0.005), setting)
    expect(found.ok).toBe(false)
    expect(!found.ok && found.because).toContain('without any damping')
  })
})

describe('the clicks for a rider', () => {
  it('are those whose damping has the wanted ratio at the sag', () => {
    // 9 N/mm under 353 N: m = 353/9.80665·0.9 = 32.4 kg; 2·0.8·√(9000·32.4) = 864 N·s/m.
    const wanted = wantedDamping(coil, { pressure: null, load: 353, factor: 0.9, ratio: 0.8 })
    expect(wanted.ok && wanted.found).toBeCloseTo(864, 0)
    // Halved in ten clicks from 1,000: ln(1000/864)/ln 2·10 = 2.1 clicks.
    const found = clicksFor(
      [
        { clicks: 0, damping: 1000 },
        { clicks: 10, damping: 500 },
      ],
      864,
    )
    expect(found.ok && found.found.clicks).toBeCloseTo(2.1, 1)
  })
})
