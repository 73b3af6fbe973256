/** One person at home; and a unit that came alone, with a second one in the same visit. */
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { fingerOn } from './src/hand.ts'
import { chapterLink, chassisSound } from './src/walk.ts'

/** A fork of 35 mm and 150 mm, measured, on the maker's sheet that is still to be filled in. */
async function measureFork(page: Page, label: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Label' }).fill(label)
  await page.getByRole('textbox', { name: 'Stanchion, by caliper' }).fill('35')
  await page.getByRole('textbox', { name: 'Travel' }).fill('150')
  const right = page.getByRole('group', { name: 'Right leg, damper: foot fastener' })
  await right.getByRole('radio', { name: 'bolt behind the knob' }).check({ force: true })
  await page.getByRole('textbox', { name: 'Name of the maker’s sheet' }).fill('K35-150')
  await page.getByRole('textbox', { name: 'Its revision' }).fill('B')
}

/** The snapshot with what there is to know: everything else is not known, because. */
async function keepNothingKnown(page: Page): Promise<void> {
  for (const item of ['Length at rest', 'Where the ring stands', 'Photos', 'Pressure', 'Rebound', 'Compression']) {
    await page.getByRole('button', { name: new RegExp(`^Not known: ${item}`) }).click()
    await page.getByRole('textbox', { name: 'Not known, because' }).fill('it lay in a box')
    await page.getByRole('button', { name: 'Keep as not known' }).click()
  }
}

describe('at home', () => {
  const bench = useBench()
  it('one name starts it; no desk, no price, nobody to ask or to hand over to', async () => {
    const { page, address } = bench
    await page.goto(address)
    await page.getByRole('button', { name: 'At home, for myself' }).click()
    expect(await page.getByRole('textbox', { name: 'Name of the shop' }).count()).toBe(0)
    await page.getByRole('textbox', { name: 'Your name' }).fill('Ines Calderhead')
    await page.getByRole('button', { name: 'Begin' }).click()
    await page.getByRole('link', { name: /Take in a unit/ }).click()
    for (const field of ['May be spent without asking', 'Promised for'])
      expect(await page.getByLabel(field).count(), field).toBe(0)
    // The person is the rider until somebody says otherwise.
    expect(await page.getByRole('textbox', { name: 'Name', exact: true }).inputValue()).toBe('Ines Calderhead')
    await measureFork(page, 'M1')
    await page.getByRole('textbox', { name: 'Mass with kit' }).fill('71')
    await page.getByRole('button', { name: 'Open the job' }).click()
    await keepNothingKnown(page)
    await chapterLink(page, 'Look over').click()
    await chassisSound(fingerOn(page))
    await chapterLink(page, 'Plan').click()
    await page.getByRole('heading', { name: 'Do it now?' }).waitFor()
    expect(await page.getByRole('radio', { name: /the rider/ }).count()).toBe(0)
    // The maker's sheet is silent: the job does not begin on guesses.
    await page.getByRole('button', { name: 'Do it', exact: true }).click()
    await page.getByText('Not written.').waitFor()
    await page.getByRole('button', { name: 'Not now' }).click()
    await page.getByRole('heading', { name: 'Nothing is done' }).waitFor()
    await chapterLink(page, 'Hand over').click()
    await page.getByRole('button', { name: 'Finish the job' }).click()
    await page.getByRole('heading', { name: /Handed over/ }).waitFor()
    await expect.poll(() => page.getByText(/^sent$/).count()).toBeGreaterThan(0)
  })
})

describe('a visit', () => {
  const bench = useBench()
  it('of a fork that came alone, and a shock with it: two jobs, one promise, from one to the other', async () => {
    const { page, address } = bench
    await page.goto(address)
    await page.getByRole('button', { name: 'Start my workshop' }).click()
    await page.getByRole('textbox', { name: 'Name of the shop' }).fill('Rosk & Daughter')
    await page.getByRole('textbox', { name: 'Your name' }).fill('Ana Rosk')
    await page.getByRole('button', { name: 'Begin' }).click()
    await page.getByRole('link', { name: /Take in a unit/ }).click()
    await measureFork(page, 'F1')
    await page.getByRole('radio', { name: 'No rider named' }).check({ force: true })
    await page.getByRole('radio', { name: 'alone, off the bike' }).check({ force: true })
    await page.getByRole('textbox', { name: 'May be spent without asking' }).fill('80')
    await page.getByLabel('Promised for').fill('2026-06-10')
    await page.getByRole('button', { name: 'Open the job' }).click()
    await page.getByText('No rider is named: Set up gives a card to start from.').waitFor()
    await page.getByText('10 June').waitFor()

    await page.getByRole('link', { name: 'A further unit of this visit' }).click()
    // The promise is the visit's: it is not asked again.
    expect(await page.getByLabel('Promised for').count()).toBe(0)
    await page.getByRole('button', { name: 'Start a new unit' }).click()
    await page.getByRole('radio', { name: 'air shock' }).check({ force: true })
    await page.getByRole('textbox', { name: 'Label' }).fill('S1')
    await page.getByRole('textbox', { name: 'Stroke' }).fill('55')
    await page.getByRole('textbox', { name: 'Name of the maker’s sheet' }).fill('K-55')
    await page.getByRole('textbox', { name: 'Its revision' }).fill('A')
    await page.getByRole('button', { name: 'Open the job' }).click()
    await page.getByRole('heading', { name: 'This visit: 2 jobs' }).waitFor()
    await page.getByText('10 June').waitFor()
    const toFork = page.getByRole('banner').getByRole('link', { name: /F1/ })
    await toFork.click()
    await page.getByRole('banner').getByRole('link', { name: /S1/ }).waitFor()
    await keepNothingKnown(page)
    await chapterLink(page, 'Look over').click()
    await chassisSound(fingerOn(page))
    await chapterLink(page, 'Plan').click()
    // 17 steps on a bike (procedure of the lower legs); alone there is no wheel and no brake to take off.
    await page.getByText('16 steps').waitFor()
    await page.getByText('up to 80 without asking').waitFor()
    // Laid out once for both legs; what only the maker's sheet can say is not guessed.
    const laidOut = page.locator('section', { has: page.getByRole('heading', { name: 'Laid out for it' }) })
    await laidOut.getByText('the sheet decides left, the sheet decides right').first().waitFor()
    // The workshop answers for the rider only within what may be spent: 95 is 15 more than 80.
    const yes = page.getByRole('button', { name: 'Yes to all of it' })
    await yes.waitFor()
    await page.getByRole('radio', { name: /the workshop, within what may be spent/ }).check({ force: true })
    await page.getByText('Name the price first: it is held against the 80 that may be spent.').waitFor()
    await page.getByRole('textbox', { name: 'Price, as you told it' }).fill('95')
    await page.getByText('15 more than the 80 that may be spent: ask the rider.').waitFor()
    expect(await yes.count()).toBe(0)
    await page.getByRole('textbox', { name: 'Price, as you told it' }).fill('80')
    await yes.waitFor()
  })
})
