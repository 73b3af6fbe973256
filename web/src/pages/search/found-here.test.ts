import type { Rider, Unit } from '@legwork/trade'
import { expect, it } from 'vitest'
import { foundHere, withMore } from './found-here.ts'

const unit = (id: string, label: string, description: string, rider: string | null): Unit => ({
  id,
  label,
  description,
  rider,
  kind: 'fork-air',
  serial: null,
  bike: null,
  sheet: 's',
})
const rider = (id: string, name: string): Rider => ({
  id,
  name,
  mass: null,
  posture: null,
  frontShare: null,
  hoursPerWeek: null,
  contact: null,
})
const units = [unit('u1', 'U01', '35 mm air fork, 150 mm', 'r1'), unit('u2', 'U02', 'coil shock, 230 × 65', null)]
const riders = [rider('r1', 'Zofia Lakotarska'), { ...rider('r2', 'removed'), removedOn: '2026-05-03T08:00:00.000Z' }]
const jobs = [
  { stream: 'job:1' as const, number: 'J01', unit: units[0], rider: riders[0], asked: 'knocks under the brake' },
]
const titles = (looked: string) => foundHere(looked, { units, riders, jobs }).map(({ title }) => title)

it('finds a unit by label, by what it is and by whose it is; a rider by name; a job by number and by what was asked', () => {
  expect(titles('u0')).toEqual(['U01', 'U02', 'J01'])
  expect(titles('coil')).toEqual(['U02'])
  expect(titles('lako')).toEqual(['U01', 'Zofia Lakotarska', 'J01'])
  expect(titles('knock brake')).toEqual(['J01'])
  expect(titles('j01')).toEqual(['J01'])
  // Who was taken out is not found any more.
  expect(titles('removed')).toEqual([])
  expect(titles('')).toEqual([])
})

it('takes what the server knows beside it once', () => {
  const here = foundHere('u01', { units, riders, jobs: [] })
  const other = { kind: 'job' as const, id: 'job:9', title: 'J09', detail: '' }
  expect(withMore(here, [...here, other]).map(({ title }) => title)).toEqual(['U01', 'J09'])
})
