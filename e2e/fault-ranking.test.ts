/** Look over: the list moves as signs and tests come in, in words; the next test with its minutes. */
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { fingerOn } from './src/hand.ts'
import { chapterLink, chassisSound, enterDemo, keepSnapshot, takeIn } from './src/walk.ts'

const list = (page: Page) => page.locator('section', { has: page.getByRole('heading', { name: 'What it could be' }) })

describe('faults at Look over', () => {
  const bench = useBench()

  it('a knock could be headset or bushings; the finger test at the wiper decides', async () => {
    const { page } = bench
    const hand = fingerOn(page)
    await enterDemo(page, bench.address)
    await takeIn(hand, 'U01', 'a knock when braking')
    await keepSnapshot(hand, 'P1')
    await list(page).getByText('Nothing points anywhere yet.').waitFor()
    // The chassis first: a loose crown could hurt somebody.
    await list(page).getByText('The chassis first: a loose joint or a bent part could hurt somebody.').waitFor()
    await chassisSound(hand)
    await chapterLink(page, 'Look over').click()
    await page
      .getByRole('group', { name: 'Knock with the front brake held' })
      .getByRole('radio', { name: 'there', exact: true })
      .click({ force: true })
    await list(page).getByRole('heading', { name: 'Likely: headset, hub or brake pads, not the fork' }).waitFor()
    const before = await list(page).innerText()
    expect(before).toContain('Possible: lower-leg bushings worn')
    expect(before).toMatch(/Next test[\s\S]*3 min/)
    expect(before).not.toMatch(/0\.\d/)
    const answerTest = async (reading: string, answer: string) =>
      list(page)
        .getByRole('group', { name: reading, exact: true })
        .getByRole('radio', { name: answer, exact: true })
        .click({ force: true })
    await answerTest('It moves at headset, hub or caliper', 'not there')
    await answerTest('It moves at the wiper', 'there')
    await list(page).getByRole('heading', { name: 'Likely: lower-leg bushings worn' }).waitFor()
    await list(page).getByText('Points here: it moves at the wiper; knock with the front brake held.').waitFor()
    expect(
      await list(page)
        .getByRole('heading', { name: /headset/ })
        .count(),
    ).toBe(0)
    // Kept in the book as any other line.
    await page.reload()
    await list(page).getByRole('heading', { name: 'Likely: lower-leg bushings worn' }).waitFor()
  })
})
