/** Set up as it is used: what stays in view, what is kept with the job, what the curve shows, and units that are no air fork. */
import type { Locator } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'
import { fingerOn } from './src/hand.ts'
import { sizes } from './src/tablet.ts'
import { chapterLink, enterDemo, takeIn, writeStartPressure } from './src/walk.ts'
import { checkFigures } from './src/worked-out.ts'

const boxOf = async (target: Locator) => {
  const box = await target.boundingBox()
  if (!box) throw new Error(`${target} has no place on the page`)
  return {
    left: box.x,
    right: box.x + box.width,
    top: box.y,
    bottom: box.y + box.height,
    middle: box.x + box.width / 2,
  }
}

describe('Set up', () => {
  const bench = useBench()
  let address = ''
  const open = async () => {
    await bench.page.goto(address)
    await bench.page.getByText('Start with').waitFor()
  }
  const chart = () => bench.page.getByRole('group', { name: 'Force over the stroke' })
  const grip = () => chart().getByRole('slider', { name: 'stroke' })
  beforeAll(async () => {
    await enterDemo(bench.page, bench.address)
    address = (await addressesOf(bench.page, bench.address)).find(([name]) => name === 'set-up')?.[1] ?? ''
  })

  it('on a tablet figure, curve, its numbers and the acts stand over the bar; the axis is the stanchion', async () => {
    const { page } = bench
    await open()
    const bar = await boxOf(page.getByRole('button', { name: 'Write these down' }))
    for (const seen of [
      page.getByText('nine times in ten', { exact: false }).first(),
      grip(),
      chart().getByText('50', { exact: true }),
      page.getByRole('button', { name: 'What if' }),
    ])
      expect((await boxOf(seen)).bottom, String(seen)).toBeLessThanOrEqual(bar.top)
    // The ring on the stanchion, that the fork pushed there, lies over the grip; drawn and chart share one scale.
    const ring = await boxOf(page.locator('svg.cutaway [data-shape="ring"]').first())
    expect(Math.abs(ring.left - (await boxOf(grip())).middle)).toBeLessThan(2)
  })

  it('upright and on a phone the curve stands under the drawing, and nothing is wider than the page', async () => {
    const { page } = bench
    for (const size of ['portrait', 'phone'] as const) {
      await page.setViewportSize(sizes[size])
      await open()
      const drawing = await boxOf(page.locator('svg.cutaway').first())
      const paper = await boxOf(chart())
      expect(paper.top, size).toBeGreaterThan(drawing.bottom)
      const sum = await boxOf(page.getByRole('heading', { name: /^Where .* comes from$/ }))
      expect(sum.top, size).toBeGreaterThan(paper.bottom - 1)
      const beyond = await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth')
      expect(beyond, size).toBe(0)
    }
    await page.setViewportSize(sizes.tablet)
  })

  it('last visit’s curve is dotted beside today’s, and stands in the table', async () => {
    const { page } = bench
    await open()
    const dotted = chart().locator('path[stroke-dasharray="0.1 4"]')
    const before = await dotted.getAttribute('d')
    for (let press = 0; press < 6; press++) await page.getByRole('button', { name: 'pressure: more' }).click()
    // The last visit's setting stays what it was; today's rises over it.
    expect(await dotted.getAttribute('d')).toBe(before)
    expect(await chart().getByText('last visit').count()).toBe(1)
    await page.getByRole('button', { name: 'Table' }).click()
    await page.getByRole('columnheader', { name: 'Slow, last visit' }).waitFor()
    await page.getByRole('button', { name: 'Close', exact: true }).click()
  })

  it('where it will be ridden stays with the job', async () => {
    const { page } = bench
    await open()
    await page.getByRole('textbox', { name: 'Trail’s altitude' }).fill('1650')
    await page.getByRole('textbox', { name: 'and temperature there' }).fill('12')
    await page.getByRole('button', { name: 'Keep it for the page handed over' }).click()
    await page.getByText('With the job, for the page handed over').waitFor()
    await open()
    expect(await page.getByRole('textbox', { name: 'Trail’s altitude' }).inputValue()).toMatch(/^1\s?650/)
    await page.getByText('With the job, for the page handed over').waitFor()
  })

  it('sag that was read stands on the curve, at its strokes', async () => {
    const { page } = bench
    await open()
    await writeStartPressure(fingerOn(page))
    await page.getByRole('textbox', { name: 'Lowered on, reads', exact: true }).fill('24')
    await page.getByRole('textbox', { name: 'Coming up to rest, reads', exact: true }).fill('30')
    await page.getByRole('button', { name: 'Write the sag' }).click()
    await chart().locator('.reading.releasing').waitFor()
    await grip().focus()
    for (const [way, millimetres] of [
      ['pressing', 24],
      ['releasing', 30],
    ] as const) {
      await page.keyboard.press('Home')
      await page.keyboard.press('PageUp')
      await page.keyboard.press('PageUp')
      for (let step = 20; step < millimetres; step++) await page.keyboard.press('ArrowRight')
      const read = await boxOf(chart().locator(`.reading.${way}`))
      expect(Math.abs(read.middle - (await boxOf(grip())).middle), way).toBeLessThan(1)
    }
  })

  it('taking a pressure keeps typed clicks, and goes before what was typed over it each time', async () => {
    const { page } = bench
    await open()
    const form = page.locator('.setting-form')
    const clicks = form.getByRole('textbox', { name: 'Rebound' })
    const pressure = form.getByRole('textbox', { name: 'Pressure' })
    const use = page.locator('.measured-sag').getByRole('button', { name: /^Use/ })
    await clicks.fill('3')
    await use.click()
    const taken = await pressure.inputValue()
    await pressure.fill('70')
    await use.click()
    expect(await pressure.inputValue()).toBe(taken)
    expect(await clicks.inputValue()).toBe('3')
  })

  it('a what-if that the fork has no room for is answered, over the curve as it is', async () => {
    const { page } = bench
    await open()
    await page.getByRole('button', { name: 'What if' }).click()
    const refused = page.locator('.what-if .refusal')
    for (let press = 0; press < 15 && (await refused.count()) === 0; press++)
      await page.getByRole('button', { name: 'spacers: more' }).click()
    expect(await refused.innerText()).toContain('must be shorter than the positive chamber')
    expect(await grip().count()).toBe(1)
  })

  it('gives clicks to start from, with the reason', async () => {
    const { page } = bench
    await open()
    // As it came in: 8 clicks at a lower pressure; more pressure asks for more closed.
    await page.getByText(/From 8 at .* as it came in/).waitFor()
    await page.getByText('The way to the clicks that stay').click()
    await page.getByText(/In this order: pressure, rebound, spacers/).waitFor()
  })

  it('a start card waits at every keystroke that leaves its fields out of range', async () => {
    const { page } = bench
    await page.goto(bench.address)
    await page.getByRole('link', { name: /Take in a unit/ }).click()
    await page.getByLabel('Find it by label, unit or rider').fill('U06')
    await page.getByRole('button', { name: 'Take in U06' }).click()
    await page.getByText('No rider named').click()
    await page.getByText('alone, off the bike').click()
    await page.getByRole('button', { name: 'Open the job' }).click()
    await page.getByRole('heading', { name: 'As it came in' }).waitFor()
    await chapterLink(page, 'Set up').click()
    const angle = page.getByRole('textbox', { name: 'Head angle' })
    const rows = page.locator('.card-table tbody tr')
    await rows.first().waitFor()
    await angle.fill('65')
    const seen: number[] = []
    for (const key of ['End', 'Backspace', '6', 'Backspace', 'Backspace', '6', '4']) {
      await page.keyboard.press(key)
      seen.push(await rows.count())
    }
    expect(seen).toEqual([16, 0, 16, 0, 0, 0, 16])
    await page.getByRole('textbox', { name: 'sprung part of the bike' }).fill('55')
    expect(await rows.count()).toBe(0)
  })

  // The demo's own: 180 psi, and a coil of 59.6 N/mm that rests at 19.5 mm.
  it.each([
    ['U10', /pressure for 28 %\s*180\s*psi/],
    ['U12', /sag with the coil that is in it\s*19.5\s*mm/],
  ])('%s is no fork: its load comes through the leverage, and its figures agree with the API', async (unit, figure) => {
    const { page } = bench
    await page.goto(bench.address)
    await takeIn(fingerOn(page), unit, 'set it up anew')
    await chapterLink(page, 'Set up').click()
    await page.getByRole('heading', { name: 'At the sag that is wanted' }).waitFor()
    expect(await page.getByRole('main').innerText()).toMatch(figure)
    expect(await page.getByRole('heading', { name: 'Start card' }).count()).toBe(0)
    const { wrong, seen } = await checkFigures(page, bench.address)
    expect(wrong).toEqual([])
    expect(seen).toBeGreaterThanOrEqual(2)
  })
})
