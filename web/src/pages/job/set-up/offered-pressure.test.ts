import { expect, it } from 'vitest'
import { offeredPressure, take } from './offered-pressure.ts'

const psi = 6894.757293168
const by = { person: '01900000-0000-7000-8000-0000000000aa', carriedOver: false, late: false }
const startAt = (entry: string, at: string, pressure: number) => ({
  ...by,
  entry,
  at,
  pressure,
  band: [pressure - 4 * psi, pressure + 4 * psi] as [number, number],
  temperature: 293.15,
  ambient: 101_325,
  riderMass: 82,
  frontShare: 0.42,
  sag: 0.2,
  load: 351,
  spacers: 1,
})
const first = startAt('01900000-0000-7000-8000-000000000001', '2026-06-03T10:00:00.000Z', 88 * psi)
const second = startAt('01900000-0000-7000-8000-000000000002', '2026-06-03T10:20:00.000Z', 90 * psi)
const setting = {
  ...by,
  entry: '01900000-0000-7000-8000-000000000003',
  at: '2026-06-03T10:10:00.000Z',
  pressure: 86 * psi,
  temperature: 293.15,
  pump: null,
  spacers: 1,
  clicks: { rebound: 8, compression: null },
}

it('offers nothing, then the start pressure, then the setting that was written after it', () => {
  expect(offeredPressure({ setUp: null, setting: null }, null).pressure).toBeNull()
  expect(offeredPressure({ setUp: first, setting: null }, null).pressure).toBe(88 * psi)
  expect(offeredPressure({ setUp: first, setting }, null).pressure).toBe(86 * psi)
})

it('a start pressure written later goes before the setting, and before what was taken', () => {
  const taken = take(84 * psi, { setUp: first }, null)
  expect(offeredPressure({ setUp: first, setting }, taken).pressure).toBe(84 * psi)
  expect(offeredPressure({ setUp: second, setting }, taken).pressure).toBe(90 * psi)
  expect(offeredPressure({ setUp: second, setting: null }, taken).pressure).toBe(90 * psi)
})

it('taking the same pressure again is a source of its own, so that it goes before what was typed', () => {
  const written = { setUp: first, setting: null }
  const once = take(84 * psi, written, null)
  const again = take(84 * psi, written, once)
  const sources = [null, once, again].map((taken) => offeredPressure(written, taken).source)
  expect(new Set(sources).size).toBe(3)
  expect(offeredPressure({ ...written, setting }, again).source).toBe(sources[2])
})
