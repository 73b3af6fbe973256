import { expect, it } from 'vitest'
import type { ForkParameters } from './fork-parameters.ts'
import { forkShapes } from './fork-shapes.ts'
import { keptShapes } from './kept-shapes.ts'

/** Invented, plausible. */
const fork = (stroke: number, positive = 7e5): ForkParameters => ({
  stanchion: 0.035,
  travel: 0.15,
  stroke,
  spring: {
    kind: 'air',
    bore: 0.032,
    shaft: 0.01,
    positiveVolume: 197e-6,
    negative: { kind: 'air', volume: 31e-6 },
    spacers: 1,
    spacerVolume: 10e-6,
  },
  legs: { left: { oil: 1e-5, volume: 205e-6, rod: 0.01 }, right: { oil: 1e-5, volume: 205e-6, rod: 0.01 } },
  pressures: { positive, negative: 3e5, left: 0, right: 0 },
})

it('keeps what stands still and never what moved: the shapes are equal either way', () => {
  const before = forkShapes(fork(0.03))
  const now = forkShapes(fork(0.04))
  const kept = keptShapes(now, before)
  expect(kept).toEqual(now)
  const names = (same: boolean) =>
    new Set(kept.filter((shape, index) => (shape === before[index]) === same).map(({ name }) => name))
  for (const name of ['stanchion.left', 'cap.left', 'spacer.1', 'cartridge']) expect(names(true)).toContain(name)
  for (const name of ['piston', 'casting.left', 'oil.left', 'chamber.positive']) expect(names(false)).toContain(name)
})

it('a chamber at another pressure is drawn anew', () => {
  const before = forkShapes(fork(0.03))
  const kept = keptShapes(forkShapes(fork(0.03, 8e5)), before)
  const changed = kept.filter((shape, index) => shape !== before[index]).map(({ name }) => name)
  expect(changed).toEqual(['chamber.positive'])
})
