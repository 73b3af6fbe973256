import { type PressTest, pressTest, type Spring } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import './bench-test-words.ts'
import { bandSays, hypothesisSays, standingOf, verdictSays } from './press-words.ts'

const text = (value: number): string => `${Math.round(value * 1e6)} ml`
const coil: Spring = { kind: 'coil', rate: 9000, stroke: 0.15 }

/** A coil pressed: `rate` really in it, 20 N of friction. */
const pressed = (rate: number): PressTest =>
  pressTest(coil, {
    presses: [
      {
        readings: [0.02, 0.04, 0.06, 0.08, 0.1, 0.12].map((stroke) => ({
          stroke,
          pressing: rate * stroke + 20,
          releasing: rate * stroke - 20,
        })),
      },
    ],
    forceSd: 4,
    strokeSd: 0.0007,
  })

describe('a press in words', () => {
  it('as the sheet says', () => {
    const test = pressed(9000)
    expect(verdictSays(test, text)).toBe('As the sheet says.')
    const of = (name: string) => standingOf(test, test.hypotheses.find((one) => one.name === name) ?? fail())
    expect(of('as-sheet')).toBe('best')
    // A rate of one, with one parameter more: it says nothing that the sheet does not.
    expect(of('rate-off')).toBe('no-better')
  })

  it('a coil that is not what is written on it', () => {
    const test = pressed(10_800)
    // 10,800 over 9,000 is 120 %.
    expect(verdictSays(test, text)).toBe('Not as the sheet says: coil at 120 % of its rate.')
    const sound = test.hypotheses.find(({ name }) => name === 'as-sheet')
    expect(sound && standingOf(test, sound)).toBe('none')
  })

  it('what one press cannot tell apart is named together', () => {
    const hypothesis = (name: 'volume-less' | 'bath-over', estimate: number) =>
      ({ name, estimate, unit: 'm³', band: [estimate - 2e-6, estimate + 2e-6], bic: 180 }) as const
    const test: PressTest = {
      friction: 14,
      frictionBand: [11, 17],
      hypotheses: [hypothesis('volume-less', 16e-6), { ...hypothesis('bath-over', 32e-6), bic: 182 }].map((one) => ({
        ...one,
        band: [...one.band],
      })),
      verdict: 'cannot-tell',
      together: ['volume-less', 'bath-over'],
      nextTest: 'second-press-half-pressure',
    }
    expect(verdictSays(test, text)).toBe(
      'Not as the sheet says, and one press cannot tell why: 16 ml less room above the piston (oil or a spacer more), or 32 ml more bath oil in each leg than the sheet says explain it alike.',
    )
    expect(bandSays(hypothesis('volume-less', 16e-6) as never, text)).toBe('14 ml to 18 ml')
    const [, second] = test.hypotheses
    expect(second && standingOf(test, second)).toBe('alike')
  })

  it('a gauge that shows too little or too much', () => {
    const off = (estimate: number) =>
      hypothesisSays({ name: 'pressure-off', estimate, unit: '1', band: [0.9, 1.02], bic: 0 }, text)
    expect(off(0.94)).toBe('6 % less pressure than the gauge showed')
    expect(off(1.06)).toBe('6 % more pressure than the gauge showed')
    expect(bandSays({ name: 'pressure-off', estimate: 0.94, unit: '1', band: [0.9, 1.02], bic: 0 }, text)).toBe(
      '−10 % to +2 %',
    )
  })
})

function fail(): never {
  throw new Error('no hypothesis')
}
