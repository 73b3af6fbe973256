import { describe, expect, it } from 'vitest'
import reference from '../../reference/iso-286.json' with { type: 'json' }
import { clearance } from './clearance.ts'
import { fitIso286, isoHoles, isoShafts } from './fit-iso286.ts'
import { rock } from './rock.ts'

const micro = (metres: readonly number[]) => metres.map((metre) => Math.round(metre * 1e6))

describe('ISO 286', () => {
  // Rows of ISO 286-2 as printed; a step goes over its lower size, up to and with its upper.
  const rows = reference.steps.flatMap(({ over, upTo, shafts, holes }) =>
    [over + 0.001, (over + upTo) / 2, upTo].map((size) => ({ size, shafts, holes })),
  )
  it.each(rows)('$size mm: shafts and holes as printed', ({ size, shafts, holes }) => {
    for (const shaft of isoShafts) {
      const { deviations } = fitIso286({ size: size / 1000, hole: 'H7', shaft })
      expect(micro(deviations.shaft).toReversed(), shaft).toEqual(shafts[shaft])
    }
    for (const hole of isoHoles) {
      const { deviations } = fitIso286({ size: size / 1000, hole, shaft: 'h7' })
      expect(micro(deviations.hole), hole).toEqual([0, holes[hole]])
    }
  })

  // Grades 6, 7 and 8 of ISO 286-1 over 3 … 80 mm, as printed.
  it.each(reference.grades)('up to $upTo mm: IT6 $it6, IT7 $it7, IT8 $it8', ({ upTo, it6, it7, it8 }) => {
    const of = (hole: 'H6' | 'H7' | 'H8') => fitIso286({ size: upTo / 1000, hole, shaft: 'h6' }).deviations.hole
    expect([...micro(of('H6')), ...micro(of('H7')), ...micro(of('H8'))]).toEqual([0, it6, 0, it7, 0, it8])
  })

  // ISO 286-1, rules behind the table (formula from memory): i = 0.45·D^(1/3) + 0.001·D, D the geometric mean of the
  // step; IT5 = 7i, IT9 = 40i; es of e, f, g = −11·D^0.41, −5.5·D^0.41, −2.5·D^0.34. The table rounds them, here within
  // 8 % and 1 µm: what was not seen printed stands on this.
  it.each(reference.grades.slice(1).map(({ upTo }, index) => [reference.grades[index]?.upTo, upTo]))(
    'over %i up to %i mm: the rows follow their rule',
    (over = 0, upTo = 0) => {
      const middle = Math.sqrt(over * upTo)
      const unit = 0.45 * Math.cbrt(middle) + 0.001 * middle
      const size = upTo / 1000
      const near = (ours: number, rule: number) =>
        expect(Math.abs(ours * 1e6 - rule)).toBeLessThanOrEqual(1 + 0.08 * Math.abs(rule))
      const shaft = (name: 'e7' | 'f7' | 'g6') => fitIso286({ size, hole: 'H7', shaft: name }).deviations.shaft[1]
      near(-fitIso286({ size, hole: 'H7', shaft: 'h5' }).deviations.shaft[0], 7 * unit)
      near(fitIso286({ size, hole: 'H9', shaft: 'h5' }).deviations.hole[1], 40 * unit)
      near(shaft('e7'), -11 * middle ** 0.41)
      near(shaft('f7'), -5.5 * middle ** 0.41)
      near(shaft('g6'), -2.5 * middle ** 0.34)
    },
  )

  // From the rows above: 32–50 mm H7/g6 9…50, H7/f7 25…75, H8/f7 25…89; 25–30 mm H7/g6 7…41, H7/f7 20…62 µm.
  it.each([
    [0.036, 'H7', 'g6', [9, 50]],
    [0.036, 'H7', 'f7', [25, 75]],
    [0.036, 'H8', 'f7', [25, 89]],
    [0.028, 'H7', 'g6', [7, 41]],
    [0.028, 'H7', 'f7', [20, 62]],
  ] as const)('%f m %s/%s', (size, hole, shaft, expected) => {
    expect(micro(fitIso286({ size, hole, shaft }).clearance)).toEqual(expected)
  })

  it('refuses sizes and classes outside the table', () => {
    expect(() => fitIso286({ size: 0.0801, hole: 'H7', shaft: 'g6' })).toThrow(/size is 80.1 mm/)
    // As it may come from outside.
    expect(() => fitIso286({ size: 0.03, hole: 'K7' as 'H7', shaft: 'g6' })).toThrow(/hole is K7; it must be one of H6/)
  })
})

// A leg with 0.1 mm below and 0.05 above, a = 230, b = 115 mm: 0.1 + 0.15·2 = 0.4 mm at the axle (by hand).
it('rock back to clearance', () => {
  expect(rock({ rock: 0.0004, a: 0.23, b: 0.115, share: 0.5 }).clearance).toBeCloseTo(0.0001, 12)
})

describe('clearance', () => {
  const limit = { watch: 0.00012, fail: 0.0002 }
  const at = (bushing: number, u: number) =>
    clearance({
      stanchion: [
        [0.03497, 0.03498],
        [0.03496, 0.03498],
      ],
      bushing: [
        [0.035, 0.035],
        [bushing, bushing],
      ],
      uStanchion: u / 2,
      uBushing: u,
      limit,
    })

  // By hand: lower 35.06 − 34.97 = 0.09 mm; upper 35.00 − 34.975 = 0.025; ovality 0.02, taper 0.005 mm.
  it('pairs, ovality, taper', () => {
    const worked = at(0.03506, 0.000003)
    expect(worked.clearance.upper).toBeCloseTo(0.000025, 12)
    expect(worked.clearance.lower).toBeCloseTo(0.00009, 12)
    expect(worked.ovality).toBeCloseTo(0.00002, 12)
    expect(worked.taper).toBeCloseTo(0.000005, 12)
    // 1.645·√(1.5² + 3²) µm = 5.5 µm
    expect(micro(worked.band)).toEqual([84, 96])
    expect(worked.verdict).toBe('pass')
    expect(worked.wouldDecide).toBeNull()
  })

  it.each([
    [0.03511, 'watch'],
    [0.03518, 'fail'],
  ])('lower bushing %f m: %s', (bushing, verdict) => {
    expect(at(bushing, 0.000003).verdict).toBe(verdict)
  })

  // 0.11 mm ± 1.645·√(5² + 10²) µm reaches over 0.12: the bore gauge doubts most and needs √((10/1.645)² − 5²) = 3.46 µm.
  it('cannot tell where the limit lies in the band, and says what would decide', () => {
    const worked = at(0.03508, 0.00001)
    expect(worked.verdict).toBe('cannot-tell')
    expect(worked.wouldDecide?.instrument).toBe('bore-gauge')
    expect(worked.wouldDecide?.u).toBeCloseTo(3.46e-6, 8)
    // With it, it does.
    const again = clearance({
      ...{
        stanchion: [
          [0.03497, 0.03498],
          [0.03496, 0.03498],
        ],
        bushing: [
          [0.035, 0.035],
          [0.03508, 0.03508],
        ],
        limit,
      },
      uStanchion: 5e-6,
      uBushing: 3.4e-6,
    })
    expect(again.verdict).toBe('pass')
  })

  it('on the limit itself no instrument decides', () => {
    expect(at(0.03509, 0.00001)).toMatchObject({ verdict: 'cannot-tell', wouldDecide: null })
  })

  it('refuses pairs that are no pairs', () => {
    expect(() => at(0.0385, 0.00001)).toThrow(/bushing\[1\] is 38.5 mm; it must be within 2 mm/)
  })
})
