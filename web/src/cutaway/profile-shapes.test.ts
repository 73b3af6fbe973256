import { expect, test } from 'vitest'
import { type ProfileOf, profileShapes } from './profile-shapes.ts'

const fork: ProfileOf = { kind: 'fork-air', body: 'single-crown', stanchion: 0.035, stroke: 0.15 }
const named = (of: ProfileOf) => profileShapes(of, 0.172, 19).map((shape) => shape.name)
const ends = (of: ProfileOf, name: string): number[] => {
  const found = profileShapes(of, 0.172, 19).find((shape) => shape.name === name)
  const [, from = '0', to = '0'] = /^M([\d.]+) [\d.]+H([\d.]+)/.exec(found?.d ?? '') ?? []
  return [Number(from), Number(to)]
}

test('30 mm of travel more: 30 mm · 0.172 px/mm at the wiper, twice that at the crown', () => {
  const longer = { ...fork, stroke: 0.18 }
  const wiper = (of: ProfileOf) => ends(of, 'upper leg, stanchion')[0] ?? 0
  const crown = (of: ProfileOf) => ends(of, 'crown')[0] ?? 0
  expect(wiper(longer) - wiper(fork)).toBeCloseTo(30 * 0.172, 1)
  expect(crown(longer) - crown(fork)).toBeCloseTo(60 * 0.172, 1)
})

test('each kind shows what it has', () => {
  expect(named({ ...fork, kind: 'fork-coil' })).toContain('coil')
  expect(named(fork)).not.toContain('coil')
  expect(named({ ...fork, body: 'dual-crown' })).toContain('upper crown')
  const shock: ProfileOf = { kind: 'shock-coil', body: 'piggyback', stanchion: null, stroke: 0.065 }
  expect(named(shock)).toEqual(expect.arrayContaining(['coil', 'reservoir']))
  expect(named({ ...shock, kind: 'shock-air', body: 'in-line' })).toContain('air can')
})

test('every shape is drawn with finite numbers', () => {
  for (const { d } of profileShapes({ ...fork, stanchion: null }, 0.118, 14)) expect(d).not.toMatch(/NaN|Infinity/)
})
