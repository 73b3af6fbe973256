import { describe, expect, it } from 'vitest'
import { demoUnits } from '../demo/units.ts'
import { sheetOfDemo } from '../journal/written-job.ts'
import { sayMessage } from '../words/words.ts'
import { checkSheet } from './check-sheet.ts'
import { genericSheet, genericSizes } from './generic-sheet.ts'
import type { Source } from './sheet.ts'
import { placeOn, sheetPlaces } from './sheet-places.ts'

const maker: Source = { ...sheetOfDemo('U01').stroke.source, document: 'Q35-150 sheet', page: '7' }
const pathsOf = (key: string) => sheetPlaces(sheetOfDemo(key)).map(({ path }) => path)

describe('the places of a sheet', () => {
  it('are those its kind of unit has', () => {
    expect(pathsOf('U01')).toEqual(
      expect.arrayContaining(['stanchion', 'spring.bore', 'spring.capTorque', 'maxPressure']),
    )
    expect(pathsOf('U01')).not.toEqual(expect.arrayContaining(['spring.rate']))
    expect(pathsOf('U08')).toEqual(expect.arrayContaining(['spring.rate', 'spring.capTorque', 'legs.right.role']))
    expect(pathsOf('U08').filter((path) => ['spring.bore', 'maxPressure', 'spacers'].includes(path))).toEqual([])
    expect(pathsOf('U10').filter((path) => /^(legs|stanchion|bushings)/.test(path))).toEqual([])
    expect(pathsOf('U10')).toEqual(expect.arrayContaining(['spring.damperGasPressure', 'clicks.rebound']))
  })

  it.each(demoUnits.map(({ key }) => key))(
    '%s: hold every value that its demo sheet has, each with its source',
    (key) => {
      const sheet = sheetOfDemo(key)
      const sources = JSON.stringify(sheet).split('"source":').length - 1 - Object.keys(sheet.limits).length
      const chosen = sheet.legs ? 4 : 0
      const held = sheetPlaces(sheet).filter((place) => place.held !== null)
      expect(held.length).toBe(sources + chosen)
      expect(held.every((place) => place.held?.source?.kind === 'makers-sheet')).toBe(true)
    },
  )

  it('have words of their own', () => {
    const labels = ['U01', 'U08', 'U10', 'U12'].flatMap((key) =>
      sheetPlaces(sheetOfDemo(key)).map(({ path, label }) => [path, sayMessage(label)] as const),
    )
    expect(labels.filter(([, says]) => says.startsWith('anything'))).toEqual([])
    expect(new Map(labels).get('legs.left.bathOilViscosity')).toBe('bath oil at 40 °C, left')
  })

  it('take a value with its source and leave the rest of the sheet alone', () => {
    const sheet = sheetOfDemo('U01')
    for (const place of sheetPlaces(sheet)) {
      const value = place.held?.value ?? 10
      const put = place.put(sheet, value, maker)
      expect(placeOn(put, place.path)?.held, place.path).toEqual({ value, source: maker })
      const others = sheetPlaces(put).filter(({ path }) => path !== place.path)
      expect(others.map(({ held }) => held)).toEqual(
        sheetPlaces(sheet)
          .filter(({ path }) => path !== place.path)
          .map(({ held }) => held),
      )
      if (place.held) expect(checkSheet(put), place.path).toMatchObject({ ok: true })
    }
    expect(sheet).toEqual(sheetOfDemo('U01'))
  })

  it('make a sheet its maker’s once nothing on it is assumed', () => {
    const size = genericSizes.find(({ key }) => key === 'U01')
    if (!size) throw new Error('U01')
    let sheet = genericSheet(size, { id: 'sheet', roles: { left: 'spring', right: 'damper' } })
    for (const place of sheetPlaces(sheet)) {
      if (typeof place.held?.value !== 'number') continue
      expect(sheet.generic, place.path).toBe(true)
      sheet = place.put(sheet, place.held.value, maker)
    }
    expect(sheet.generic).toBe(false)
  })
})
