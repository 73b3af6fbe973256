import { forkShapes, volumeOf } from '@legwork/drawing'
import { forkForTests as fork } from '@legwork/drawing/fork-for-tests.ts'
import { expect, it } from 'vitest'
import { chamberFigures, lowerFigure } from './chamber-figures.ts'

it.each([0, 0.03, 0.15])('the volumes written at stroke %f are the volumes drawn there', (stroke) => {
  const figures = chamberFigures(fork(stroke))
  const shapes = forkShapes(fork(stroke))
  expect(volumeOf(shapes, 'chamber.positive') / (figures?.positive.volume ?? 0)).toBeCloseTo(1, 3)
  expect(volumeOf(shapes, 'chamber.negative') / (figures?.negative.volume ?? 0)).toBeCloseTo(1, 3)
})

// Hand calculation: 7e5 Pa · π/4·(32 mm)² = 563 N; 3e5 Pa · π/4·(32² − 10²) mm² = 217.7 N.
it('forces are pressure times area', () => {
  const figures = chamberFigures(fork(0))
  expect(figures?.positive.force).toBeCloseTo(563, 0)
  expect(figures?.negative.force).toBeCloseTo(217.7, 1)
})

it('a coil has no chambers', () => {
  expect(chamberFigures({ ...fork(0), spring: { kind: 'coil', bore: 0.032, shaft: 0.01 } })).toBeNull()
})

it.each([0, 0.03, 0.15])('the air written beside a lower leg at stroke %f is the air drawn there', (stroke) => {
  const shapes = forkShapes(fork(stroke))
  for (const leg of ['left', 'right'] as const)
    expect(volumeOf(shapes, `chamber.lower.${leg}`) / (lowerFigure(fork(stroke), leg)?.volume ?? 0)).toBeCloseTo(1, 2)
})

// Hand calculation: 0.4 bar · π/4·(35² − 10²) mm² = 35.3 N.
it('the air in a lower leg pushes on its own ring', () => {
  const pressed = { ...fork(0.1), pressures: { positive: 7e5, negative: 3e5, left: 40_000, right: 0 } }
  expect(lowerFigure(pressed, 'left')?.force).toBeCloseTo(35.3, 1)
})
