import { forkShapes } from '@legwork/drawing'
import { forkForTests as fork } from '@legwork/drawing/fork-for-tests.ts'
import { expect, it } from 'vitest'
import { keptShapes } from './kept-shapes.ts'

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
  expect(changed).toEqual(['chamber.positive', 'valve-passage', 'force.positive'])
})
