import type { Spring } from '@legwork/engine'
import type { Instrument, MeasuredEntry, Pressed } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { furthestOff, pressAsked, truePressure } from './press-asked.ts'

const coil: Spring = { kind: 'coil', rate: 9000, stroke: 0.15 }
const made = {
  person: 'p',
  at: '2026-05-02T09:00:00.000Z',
  carriedOver: false,
  late: false,
  leg: null,
  phase: 'received',
}

const read = (entry: string, value: number, measure: 'N' | 'Pa', instrument: string | null = null): MeasuredEntry =>
  ({ ...made, entry, what: 'press-force', reading: { value, measure, instrument, how: null } }) as MeasuredEntry // leg and phase are words of its type

const pressed = (stops: readonly (readonly [number, number, number | null])[], filled = 0): Pressed => ({
  filling: read('filling', filled, 'Pa', 'P2'),
  temperature: null,
  stops: stops.map(([stroke, pressing, releasing]) => ({
    stroke,
    pressing: read(`down ${stroke}`, pressing, 'N'),
    releasing: releasing === null ? null : read(`up ${stroke}`, releasing, 'N'),
  })),
})

const pump: Instrument = {
  id: 'P2',
  name: 'P2',
  note: null,
  kind: 'pump',
  hoseVolume: 5e-6,
  resolution: 6894.757,
  offset: 0.04,
}

describe('what a press asks of the engine', () => {
  it('needs three stops read both ways; a stop that was not come back to is left out', () => {
    const stops = [
      [0.03, 290, 250],
      [0.06, 560, 520],
      [0.09, 830, null],
    ] as const
    expect(pressAsked(coil, [pressed(stops)], [])).toBeNull()
    const asked = pressAsked(coil, [pressed([...stops, [0.1, 920, 880]])], [])
    expect(asked?.presses[0]?.readings.map(({ stroke }) => stroke)).toEqual([0.03, 0.06, 0.1])
  })

  it('takes the gauge’s own error out: 91.52 psi on a gauge that reads 4 % high are 88 psi', () => {
    expect(truePressure(read('filling', 91.52 * 6894.757, 'Pa', 'P2'), [pump]) / 6894.757).toBeCloseTo(88, 6)
    expect(truePressure(read('filling', 88 * 6894.757, 'Pa'), [pump]) / 6894.757).toBeCloseTo(88, 6)
  })
})

describe('the spring against its sheet', () => {
  it('is judged where it is furthest off between 20 and 60 % of the travel', () => {
    // 9,000 N/m: 270 N at 30 mm, 540 N at 60 mm, 810 N at 90 mm, 1,170 N at 130 mm (87 %, not counted).
    const asked = pressAsked(
      coil,
      [
        pressed([
          [0.03, 290, 250],
          [0.06, 614, 574],
          [0.09, 830, 790],
          [0.13, 2000, 1960],
        ]),
      ],
      [],
    )
    const off = asked && furthestOff(asked)
    // (614 + 574)/2 = 594; 594/540 − 1 = 0.10.
    expect(off).toMatchObject({ stroke: 0.06, mean: 594 })
    expect(off?.sheet).toBeCloseTo(540, 6)
    expect(off?.off).toBeCloseTo(0.1, 6)
  })
})
