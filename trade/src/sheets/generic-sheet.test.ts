import { prepareSpring, pressureForSag } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { demoDimensions } from '../demo/sheets.ts'
import { assumedPlaces, isAssumed } from './assumed.ts'
import { checkSheet } from './check-sheet.ts'
import { genericSheet, genericSizes, genericSizesFor } from './generic-sheet.ts'
import { neededValues } from './needed-values.ts'
import { springOf } from './spring-of.ts'

const roles = { left: 'spring', right: 'damper' } as const
const psi = 6894.757293168
const made = (key: string) => {
  const size = genericSizes.find((one) => one.key === key)
  if (!size) throw new Error(key)
  return genericSheet(size, { id: 'sheet', roles: size.kind.startsWith('fork') ? roles : null })
}

describe('a generic sheet', () => {
  it.each(genericSizes.map(({ key }) => key))('of %s is a whole sheet, marked, all of it assumed', (key) => {
    const sheet = made(key)
    expect(checkSheet(sheet)).toMatchObject({ ok: true })
    expect(sheet.generic).toBe(true)
    const sourced = Object.values(sheet.spring)
    expect(sourced.length).toBeGreaterThan(0)
    expect(sourced.every(({ source }) => isAssumed(source))).toBe(true)
    expect(assumedPlaces(sheet)).toContain('stroke')
  })

  it.each(genericSizes.map(({ key }) => key))('of %s leaves empty what only the maker can say', (key) => {
    const sheet = made(key)
    expect([sheet.maxPressure, sheet.freeLength, sheet.spacers, sheet.bushings]).toEqual([null, null, null, null])
    expect(sheet.clicks).toEqual({ rebound: null, compression: null })
    expect(sheet.spring.capTorque).toBeUndefined()
    expect(sheet.limits).toEqual({})
    for (const leg of sheet.legs ? [sheet.legs.left, sheet.legs.right] : [])
      expect([leg.fixing, leg.bathOil, leg.bathOilViscosity, leg.washer, leg.footTorque]).toEqual(Array(5).fill(null))
  })

  it('lets no plan rest on it: every value a service needs is asked for', () => {
    const asked = neededValues(['lower-legs', 'air-spring'], made('U01'))
    expect(asked.map(({ field, good }) => [field, good])).toEqual([
      ['legs.left.bathOil', false],
      ['legs.left.washer', false],
      ['legs.left.footTorque', false],
      ['legs.right.bathOil', false],
      ['legs.right.washer', false],
      ['legs.right.footTorque', false],
      ['spring.capTorque', false],
    ])
  })

  // The invented dimensions of the reference file; its stated pressures were worked out outside this project's code.
  it.each(['U01', 'U04', 'U09'])('gives the pressure of %s once spacers and oil are filled in', (key) => {
    const sheet = made(key)
    const { spring, load, sag, pressure = 0 } = demoDimensions(key)
    const legs = Reflect.get(Reflect.get(spring, 'lower') as object, 'legs') as { oil: number }[] // the file's shape
    const [left, right] = legs.map(({ oil }) => oil)
    const filled = springOf(sheet, { spacers: Number(spring.spacers), oil: { left: left ?? 0, right: right ?? 0 } })
    const found = pressureForSag(filled, { load, sag: sag / Number(spring.stroke) })
    expect(Math.abs(found.pressure - pressure) / psi).toBeLessThan(1)
  })

  it('keeps the room at the end of the chamber for another travel', () => {
    const size = genericSizes.find(({ key }) => key === 'U01')
    if (!size) throw new Error('U01')
    const source = { ...made('U01').stroke.source }
    const longer = genericSheet(size, { id: 'sheet', roles, stroke: { value: 0.16, source } })
    expect(checkSheet(longer)).toMatchObject({ ok: true })
    // By hand: 197 ml + π/4·32²·10 mm³ = 197 + 8.0425 ml.
    expect(longer.spring.positiveVolume?.value).toBeCloseTo(205.0425e-6, 9)
    expect(prepareSpring(springOf(longer), 6e5, { ambient: 101_325 }).force(0.03)).toBeGreaterThan(0)
  })

  it('wants the roles of a fork’s legs said', () => {
    const size = genericSizes.find(({ key }) => key === 'U01')
    if (!size) throw new Error('U01')
    expect(() => genericSheet(size, { id: 'sheet', roles: null })).toThrow('say which holds the spring')
  })
})

describe('the sizes offered', () => {
  it('are of the kind, the nearest travel first, of no other stanchion', () => {
    const like = { kind: 'fork-air', body: 'single-crown', stanchion: 0.035, stroke: 0.142 } as const
    expect(genericSizesFor(like).map(({ key }) => key)).toEqual(['U06', 'U01'])
    expect(genericSizesFor({ ...like, stanchion: 0.03 })).toEqual([])
    expect(genericSizesFor({ kind: 'shock-coil', stanchion: null, stroke: 0.065 })[0]?.key).toBe('U12')
  })

  it('has one of every kind', () => {
    expect([...new Set(genericSizes.map(({ kind }) => kind))].sort()).toEqual([
      'fork-air',
      'fork-coil',
      'shock-air',
      'shock-coil',
    ])
  })
})
