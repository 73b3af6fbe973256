/** The section as a browser draws it stands for what the engine says of its sheet, and for nothing else. */
import { randomUUID } from 'node:crypto'
import { type AirSpring, prepareSpring, seededDraws } from '@legwork/engine'
import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { axisOf, changedNames, type DrawnSection, drawnSection, turnedVolume } from './src/drawn-section.ts'
import { deliverSheets, registersOf, type SheetBody } from './src/sheets-by-hand.ts'
import { enterDemo } from './src/walk.ts'

const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2
const atmosphere = 101_325

/** A sheet with other numbers; the sources stay those of the sheet it is made of. */
function withValues(sheet: SheetBody, name: string, values: Record<string, number>): SheetBody {
  const made: SheetBody = { ...structuredClone(sheet), id: randomUUID(), name, revision: 'A' }
  for (const [field, value] of Object.entries(values)) {
    const [first = '', second] = field.split('.')
    if (first === 'spring' && second) made.spring[second] = { ...made.spring.bore, value }
    else if (first === 'oil') made.legs[second === 'left' ? 'left' : 'right'].bathOil.value = value
    else Object.assign(made, { [first]: { ...made.stroke, value } })
  }
  return made
}

/** Twenty forks nobody built: invented, their ranges common practice, no source; the seed is part of the test. */
function invented(sheet: SheetBody): SheetBody[] {
  const draw = seededDraws(65)
  const between = (low: number, high: number) => low + (high - low) * draw()
  return Array.from({ length: 20 }, (_, index) => {
    const bore = between(0.028, 0.036)
    const shaft = between(0.008, 0.012)
    const travel = Math.round(between(100, 200)) / 1000
    const spacers = Math.floor(between(0, 4))
    const spacerVolume = 9e-6
    const stanchion = bore + 0.003
    const filled = spacers * spacerVolume
    return withValues(sheet, `Drawn ${index + 1}`, {
      stanchion,
      stroke: travel,
      spacers,
      lowerVolume: circle(stanchion) * (travel + between(0.05, 0.085)),
      'spring.bore': bore,
      'spring.shaft': shaft,
      'spring.lowerRod': shaft,
      'spring.spacerVolume': spacerVolume,
      'spring.positiveVolume': circle(bore) * (travel + between(0.035, 0.11)) + filled,
      'spring.negativeVolume': (circle(bore) - circle(shaft)) * between(0.024, 0.062),
      'spring.equalisingStroke': 0.0025,
      'oil.left': between(3e-6, 2.5e-5),
      'oil.right': between(3e-6, 2.5e-5),
    })
  })
}

/** The engine's own spring of such a sheet, and through its pressures every volume: p·V stays while nothing leaks. */
function engineVolumes(sheet: SheetBody, stroke: number): Record<string, number> {
  const value = (field: string) => sheet.spring[field]?.value ?? 0
  const oil = { left: sheet.legs.left.bathOil.value, right: sheet.legs.right.bathOil.value }
  const spring: AirSpring = {
    kind: 'air',
    stroke: sheet.stroke.value,
    bore: value('bore'),
    shaft: value('shaft'),
    positiveVolume: value('positiveVolume'),
    negativeVolume: value('negativeVolume'),
    equalisingStroke: value('equalisingStroke'),
    spacers: sheet.spacers.value,
    spacerVolume: value('spacerVolume'),
    lower: {
      volume: sheet.lowerVolume.value,
      stanchion: sheet.stanchion.value,
      rod: value('lowerRod'),
      legs: [{ oil: oil.left }, { oil: oil.right }],
    },
  }
  const prepared = prepareSpring(spring, 600_000)
  const [start, here, port] = [0, stroke, spring.equalisingStroke ?? 0].map((at) => prepared.pressures(at))
  const ratio = (from: number | undefined, to: number | undefined) =>
    ((from ?? 0) + atmosphere) / ((to ?? 0) + atmosphere)
  const ring = circle(spring.bore) - circle(spring.shaft)
  const positive = spring.positiveVolume - sheet.spacers.value * value('spacerVolume')
  const negativeAtPort = value('negativeVolume') + ring * value('equalisingStroke')
  return {
    'chamber.positive': positive * ratio(start?.positive, here?.positive),
    'chamber.negative': negativeAtPort * ratio(port?.negative, here?.negative),
    'chamber.lower.left': (sheet.lowerVolume.value - oil.left) * ratio(start?.lower[0], here?.lower[0]),
    'chamber.lower.right': (sheet.lowerVolume.value - oil.right) * ratio(start?.lower[1], here?.lower[1]),
    'oil.left': oil.left,
    'oil.right': oil.right,
  }
}

const legOf = (name: string) => (name.endsWith('.right') ? 'right' : 'left')

/** Opens a sheet as a link in the app would, and waits for its drawing. */
async function openSheet(page: Page, sheet: SheetBody): Promise<void> {
  await page.evaluate((path) => history.pushState(null, '', path), `/sheets/${sheet.id}`)
  await page.getByRole('heading', { level: 1, name: sheet.name, exact: true }).waitFor()
  await page.getByRole('slider', { name: 'Stroke of the fork' }).focus()
}

/** Five strokes by keys alone: full length, three on the way, the end. */
const ways: readonly (readonly string[])[] = [
  ['Home'],
  ['PageUp', 'PageUp', 'ArrowRight', 'ArrowRight', 'ArrowRight'],
  ['PageUp', 'PageUp', 'PageUp', 'ArrowLeft'],
  ['PageUp', 'PageUp'],
  ['End'],
]

async function pressed(page: Page, keys: readonly string[]): Promise<DrawnSection> {
  for (const key of keys) await page.keyboard.press(key)
  return drawnSection(page)
}

describe('a section in the browser', () => {
  const bench = useBench()
  let demo: SheetBody
  let twenty: readonly SheetBody[]
  /** The demo's sheet with one value changed, by that value. */
  const changed: Record<string, SheetBody> = {}
  const changes: Record<string, Record<string, number>> = {
    nothing: {},
    'one spacer more': { spacers: 2 },
    'larger spacers': { 'spring.spacerVolume': 12e-6 },
    'oil left': { 'oil.left': 18e-6 },
    'oil right': { 'oil.right': 18e-6 },
    'oil in the chamber': { 'spring.chamberOil': 4e-6 },
    'place of the port': { 'spring.equalisingStroke': 0.006 },
    'negative volume': { 'spring.negativeVolume': 29e-6 },
    'largest pressure': { maxPressure: 900_000 },
    'free length': { freeLength: 0.17 },
  }
  beforeAll(async () => {
    await enterDemo(bench.page, bench.address)
    const { sheets } = await registersOf(bench.address)
    const found = sheets.find(({ body }) => body.name === 'Q35-150')?.body
    if (!found) throw new Error('the demo has no sheet Q35-150')
    demo = found
    twenty = invented(demo)
    for (const [what, values] of Object.entries(changes)) changed[what] = withValues(demo, `Changed: ${what}`, values)
    await deliverSheets(bench.address, [...twenty, ...Object.values(changed)])
  })

  it('each chamber stands for the engine’s volume within 1 %: 20 sheets, 5 strokes; the bath follows', async () => {
    const seen: number[] = []
    for (const sheet of twenty) {
      await openSheet(bench.page, sheet)
      for (const way of ways) {
        const drawn = await pressed(bench.page, way)
        seen.push(drawn.stroke)
        for (const [name, expected] of Object.entries(engineVolumes(sheet, drawn.stroke))) {
          const volume = turnedVolume(drawn, name, axisOf(drawn, legOf(name)))
          const says = `${sheet.name}, ${name} at ${drawn.stroke} m: drawn ${volume}, engine ${expected}`
          expect(Math.abs(volume / expected - 1), says).toBeLessThan(0.01)
        }
      }
    }
    expect(seen).toHaveLength(100)
    expect(new Set(seen).size).toBeGreaterThan(20)
  })

  const section = async (what: string, keys: readonly string[]): Promise<DrawnSection> => {
    const sheet = changed[what]
    if (!sheet) throw new Error(`no sheet with ${what}`)
    await openSheet(bench.page, sheet)
    return pressed(bench.page, keys)
  }

  // What hangs on what, by the build of an air spring: all stands on the seal head, so that a longer negative lifts the rest.
  it.each([
    ['one spacer more', ['chamber.positive', 'spacer.2']],
    ['larger spacers', ['chamber.positive', 'spacer.1']],
    ['oil left', ['chamber.lower.left', 'oil-level.left', 'oil.left']],
    ['oil right', ['chamber.lower.right', 'oil-level.right', 'oil.right']],
    ['oil in the chamber', ['chamber.positive', 'oil.chamber']],
    ['place of the port', ['port']],
    [
      'negative volume',
      [
        'cap.left',
        'chamber.negative',
        'chamber.positive',
        'glide.piston',
        'piston',
        'port',
        'seal.piston',
        'shaft-end.left',
        'shaft.left',
        'spacer.1',
        'valve-passage',
      ],
    ],
    ['largest pressure', []],
    ['free length', []],
  ])('%s changes exactly what hangs on it', async (what, names) => {
    const keys = ['Home', 'PageUp', 'PageUp', 'PageUp']
    const before = await section('nothing', keys)
    expect(changedNames(before, await section(what, keys))).toEqual(names)
  })

  it('another pressure changes the arrows of the forces and no part', async () => {
    await section('nothing', ['Home', 'PageUp', 'PageUp', 'PageUp'])
    const filledTo = async (pressure: string) => {
      const field = bench.page.getByLabel('Drawn at a pressure')
      await field.fill(pressure)
      await field.blur()
      return drawnSection(bench.page)
    }
    const before = await filledTo('80 psi')
    expect(changedNames(before, await filledTo('95 psi'))).toEqual(['force.negative', 'force.positive'])
  })

  it('the level of the bath rises with oil', async () => {
    const level = async (what: string) => {
      const drawn = await section(what, ['Home'])
      return Number(drawn.outlines.get('oil-level.left')?.[0]?.match(/^M([\d.]+)/)?.[1])
    }
    expect(await level('oil left')).toBeGreaterThan((await level('nothing')) + 3)
  })

  it('a finger on the drawing takes the lower legs along, and leaves the stanchions', async () => {
    const { page } = bench
    const still = await section('nothing', ['Home'])
    const box = await page.locator('svg.cutaway').first().boundingBox()
    if (!box) throw new Error('the drawing has no place')
    await page.mouse.move(box.x + 200, box.y + box.height / 2)
    await page.mouse.down()
    await page.mouse.move(box.x + 300, box.y + box.height / 2, { steps: 5 })
    await page.mouse.up()
    const moved = await drawnSection(page)
    const paper = await page
      .locator('svg.cutaway')
      .first()
      .evaluate((svg) => svg.getAttribute('viewBox') ?? '')
    const millimetres = (100 * Number(paper.split(' ')[2])) / box.width
    expect(moved.stroke * 1e3).toBeCloseTo(millimetres, -0.31)
    const names = changedNames(still, moved)
    for (const name of ['casting.left', 'casting.right', 'piston', 'chamber.positive']) expect(names).toContain(name)
    for (const name of ['stanchion.left', 'cap.left', 'crown.web']) expect(names).not.toContain(name)
  })

  it('presses itself slowly, in still pictures where motion is not wanted, and stops', async () => {
    const { page } = bench
    await section('nothing', ['Home'])
    await page.getByRole('button', { name: 'Press it slowly' }).click()
    await expect.poll(async () => (await drawnSection(page)).stroke, { timeout: 5000 }).toBeGreaterThan(0)
    await page.getByRole('button', { name: 'Stop', exact: true }).click()
    const { stroke } = await drawnSection(page)
    await page.waitForTimeout(1200)
    expect((await drawnSection(page)).stroke).toBe(stroke)
  })

  it('on paper it is a line drawing: nothing in it is filled but with black, white or lines', async () => {
    const { page } = bench
    await section('nothing', ['Home'])
    await page.emulateMedia({ media: 'print' })
    const fills = await page
      .locator('svg.cutaway')
      .first()
      .evaluate((svg) => [
        ...new Set([...svg.querySelectorAll('[data-shape] path')].map((path) => getComputedStyle(path).fill)),
      ])
    await page.emulateMedia({ media: null })
    const rest = fills.filter((fill) => !/^(none|rgb\(0, 0, 0\)|rgb\(255, 255, 255\)|url\()/.test(fill))
    expect(rest).toEqual([])
  })

  it('its table says in figures what it shows, to whoever opens it', async () => {
    const { page } = bench
    await section('nothing', ['Home'])
    await page.getByRole('button', { name: 'Table' }).click()
    const table = page.getByRole('dialog').getByRole('table')
    const row = (name: string) => table.getByRole('row', { name: new RegExp(name) })
    // The sheet's own 197 ml less one spacer of 10 ml, and its 31 ml.
    expect(await row('positive chamber').innerText()).toMatch(/187\s*ml/)
    expect(await row('negative chamber').innerText()).toMatch(/31\s*ml/)
    expect(await row('bath oil, left').innerText()).toMatch(/10\s*ml/)
    await page.getByRole('button', { name: 'Close', exact: true }).click()
  })
})
