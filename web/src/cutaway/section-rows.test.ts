import type { ForkParameters } from '@legwork/drawing'
import { expect, it } from 'vitest'
import { oilLevel, sectionRows } from './section-rows.ts'

/** Invented, plausible. */
const fork = (stroke: number, oil = 1e-5): ForkParameters => ({
  stanchion: 0.035,
  travel: 0.15,
  stroke,
  spring: {
    kind: 'air',
    bore: 0.032,
    shaft: 0.01,
    positiveVolume: 197e-6,
    negative: { kind: 'air', volume: 31e-6 },
    spacers: 2,
    spacerVolume: 10e-6,
  },
  legs: { left: { oil, volume: 205e-6, rod: 0.01 }, right: { oil: 1e-5, volume: 205e-6, rod: 0.01 } },
  bushingsApart: 0.115,
  pressures: { positive: 7e5, negative: 3e5, left: 0, right: 0 },
  ring: 0.03,
})

it('names every chamber, bath and part once', () => {
  expect(sectionRows(fork(0.03)).map(({ part }) => part)).toEqual([
    'positive',
    'negative',
    'lower.left',
    'lower.right',
    'oil.left',
    'oil.right',
    'spacers',
    'bushings',
    'ring',
  ])
})

// By hand: two spacers of 10 ml; 197 − 20 ml at full length.
it('gives volumes at the stroke', () => {
  const rows = sectionRows(fork(0))
  expect(rows.find(({ part }) => part === 'spacers')?.volume).toBeCloseTo(20e-6, 12)
  expect(rows.find(({ part }) => part === 'positive')?.volume).toBeCloseTo(177e-6, 12)
})

it('the bath stands higher with more oil, and where the stanchion comes down into it', () => {
  expect(oilLevel(fork(0, 2e-5), 'left')).toBeGreaterThan(oilLevel(fork(0), 'left'))
  expect(oilLevel(fork(0.149, 5e-5), 'left')).toBeGreaterThan(oilLevel(fork(0.05, 5e-5), 'left'))
})

it('calls the legs as they are called on the fork, whichever holds the spring', () => {
  const swapped = { ...fork(0, 2e-5), springLeg: 'right' } as const
  const oil = sectionRows(swapped).filter(({ part }) => part.startsWith('oil.'))
  expect(oil.map(({ part, volume }) => [part, volume])).toEqual([
    ['oil.right', 2e-5],
    ['oil.left', 1e-5],
  ])
})
