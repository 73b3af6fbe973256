/** Every worked-out figure of every page is what its own panel says: the same question to the API gives the same number. */
import { beforeAll, describe, expect, it } from 'vitest'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'
import { fingerOn } from './src/hand.ts'
import { chapterLink, enterDemo, workThrough, writeStartPressure } from './src/walk.ts'
import { checkFigures } from './src/worked-out.ts'

describe('worked-out figures', () => {
  const bench = useBench({ clock: true })
  let addresses: [string, string][] = []
  const open = async (name: string) => {
    const address = addresses.find(([one]) => one === name)?.[1]
    if (!address) throw new Error(`no page ${name}`)
    await bench.page.goto(address)
    await bench.page.getByRole('main').first().waitFor()
  }
  beforeAll(async () => {
    await enterDemo(bench.page, bench.address)
    addresses = await addressesOf(bench.page, bench.address)
  })

  it('of every page open, and agree with the API', async () => {
    const wrong: Record<string, string[]> = {}
    let all = 0
    for (const [name, address] of addresses) {
      // On a calculation's own page the whole page is the panel; `calculations.test.ts` lays it beside the API.
      if (name === 'calculation') continue
      await bench.page.goto(address)
      await bench.page.getByRole('main').first().waitFor()
      await bench.page.waitForTimeout(150)
      const found = await checkFigures(bench.page, bench.address)
      all += found.seen
      if (found.wrong.length > 0) wrong[name] = found.wrong
    }
    expect(wrong).toEqual({})
    expect(all).toBeGreaterThan(8)
  })

  it('of a what-if, of the trail and of a measured sag', async () => {
    const { page } = bench
    await open('set-up')
    await page.getByRole('textbox', { name: 'Trail’s altitude' }).fill('1650')
    await page.getByRole('textbox', { name: 'and temperature there' }).fill('12')
    await page.getByRole('textbox', { name: 'P1 shows', exact: true }).fill('76')
    await page.getByRole('textbox', { name: 'the rider’s then shows', exact: true }).fill('80')
    await page.getByRole('button', { name: 'Keep it with the rider' }).click()
    await page.getByText('the rider’s pump put on afterwards will show').waitFor()
    await writeStartPressure(fingerOn(page))
    await page.getByRole('textbox', { name: 'Lowered on, reads', exact: true }).fill('24')
    await page.getByRole('textbox', { name: 'Coming up to rest, reads', exact: true }).fill('30')
    await page.getByRole('textbox', { name: 'Coming up to rest, reads', exact: true }).blur()
    await page.getByRole('button', { name: 'What if' }).click()
    await page.getByRole('button', { name: 'spacers: more' }).click()
    await page.getByRole('button', { name: 'more oil: more' }).click()
    await page.getByRole('button', { name: 'altitude: more' }).click()
    await page.getByRole('button', { name: 'outside: less' }).click()
    const asked = await checkFigures(page, bench.address)
    expect(asked.wrong).toEqual([])
    // Both columns of the what-if, the sag's band, three pumps, the trail's two, the measured sag's four.
    expect(asked.seen).toBeGreaterThanOrEqual(21)
  })

  it('of a fill: the share of the pressure, and what the pump shows', async () => {
    const { page } = bench
    // Only the hands that let the air out vouch for it.
    await open('hands')
    await page.getByRole('button', { name: /Sunniva Raghavold/ }).click()
    await open('work')
    await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor()
    await workThrough(fingerOn(page), [], 'Ten strokes')
    // This fork's own travel: the walk's is another one's.
    await page.getByRole('textbox', { name: 'Measured travel' }).fill('130 mm')
    await workThrough(fingerOn(page), [], 'Air:')
    // One pump reads true, the other does not: the figure is what the one in hand shows.
    for (const pump of ['P1', 'P2']) {
      await page.getByRole('main').getByRole('combobox').first().selectOption({ label: pump })
      const fill = await checkFigures(page, bench.address)
      expect(fill.wrong, pump).toEqual([])
      expect(fill.seen, pump).toBeGreaterThan(0)
    }
  })

  it('of a start card, where a unit came alone', async () => {
    const { page } = bench
    await open('take-in-a-unit')
    await page.getByLabel('Find it by label, unit or rider').fill('U01')
    await page.getByRole('button', { name: 'Take in U01' }).click()
    await page.getByText('No rider named').click()
    await page.getByText('alone, off the bike').click()
    await page.getByRole('button', { name: 'Open the job' }).click()
    await page.getByRole('heading', { name: 'As it came in' }).waitFor()
    await chapterLink(page, 'Set up').click()
    await page.getByRole('heading', { name: 'Start card' }).waitFor()
    const card = await checkFigures(page, bench.address, 4)
    expect(card.wrong).toEqual([])
    expect(card.seen).toBe(4)
  })
})
