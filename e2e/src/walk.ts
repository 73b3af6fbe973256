/** One whole job on an air fork, by role and label, as a technician would tap it. */

import type { Page } from 'playwright-core'
import { expect } from 'vitest'

export const chapterLink = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Chapters of this job' }).getByRole('link', { name: new RegExp(name) })

/** From the first page into the demo workshop. */
export async function enterDemo(page: Page, address: string): Promise<void> {
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around the demo workshop' }).click()
  await page.getByRole('link', { name: /Take in a unit/ }).waitFor()
}

/** Take in a known unit with what the rider says; ends on the new job's first chapter. */
export async function takeIn(page: Page, label: string, words: string): Promise<void> {
  await page.getByRole('link', { name: /Take in a unit/ }).click()
  await page.getByLabel('Find it by label, unit or rider').fill(label)
  await page.getByRole('button', { name: `Take in ${label}` }).click()
  await page.getByLabel(/What the rider says/).fill(words)
  await page.getByRole('button', { name: 'Open the job' }).click()
  await page.getByRole('heading', { name: 'As it came in' }).waitFor()
}

/** The snapshot in its order. */
export async function keepSnapshot(page: Page, pump: string): Promise<void> {
  const keep = page.getByRole('button', { name: 'Keep', exact: true })
  await page.getByRole('textbox', { name: 'Length at rest' }).fill('164')
  await keep.click()
  await page.getByRole('textbox', { name: 'Where the ring stands' }).fill('138')
  await keep.click()
  await page.getByRole('button', { name: /^Not known: Photos/ }).click()
  await page.getByRole('textbox', { name: 'Not known, because' }).fill('no camera at the bench')
  await page.getByRole('button', { name: 'Keep as not known' }).click()
  await page.getByRole('radio', { name: new RegExp(`^${pump}`) }).check({ force: true })
  await page.getByRole('textbox', { name: 'Pressure', exact: true }).fill('80psi')
  await keep.click()
  await page.getByRole('textbox', { name: /^Rebound/ }).fill('8')
  await keep.click()
  await page
    .getByRole('link', { name: /Look over/ })
    .last()
    .click()
}

/** Every part of the chassis sound. */
export async function chassisSound(page: Page): Promise<void> {
  for (const part of ['Crown', 'Steerer', 'Stanchions', 'Lower legs', 'Dropouts'])
    await page.getByRole('button', { name: `${part} sound` }).click()
}

export async function agreePlan(page: Page): Promise<void> {
  await chapterLink(page, 'Plan').click()
  await page.getByRole('button', { name: 'Yes to all of it' }).click()
  await page.getByRole('heading', { name: 'Agreed' }).waitFor()
}

/** What is read at a step, by the words of its field. */
const readings: readonly [RegExp, string][] = [
  [/^Drained, left/, '8 ml'],
  [/^Drained, right/, '7 ml'],
  [/^Filled, left/, '10 ml'],
  [/^Filled, right/, '10 ml'],
  [/^Measured travel/, '150 mm'],
]

export interface StepSeen {
  title: string
  /** Everything that stands on the step's page. */
  text: string
}

/** Ticks the step that is open: reads what is asked, says what must be said, ticks each leg. */
export async function tickStep(page: Page, gauge: string): Promise<StepSeen> {
  const main = page.getByRole('main')
  const title = await main.getByRole('heading', { level: 1 }).innerText()
  const text = await main.innerText()
  for (let round = 0; round < 12; round++) {
    for (const [label, value] of readings) {
      const field = main.getByRole('textbox', { name: label })
      if ((await field.count()) > 0 && (await field.first().inputValue()) === '') await field.first().fill(value)
    }
    const shows = main.getByRole('textbox', { name: 'Gauge shows' })
    if ((await shows.count()) > 0 && (await shows.inputValue()) === '') await shows.fill(gauge)
    const open = main.locator('[role=checkbox][aria-checked=false][aria-disabled=false]')
    if ((await open.count()) === 0) break
    await open.first().click()
    await page.waitForTimeout(60)
  }
  return { title, text }
}

/** Works from the step in hand to the last; gives what was seen on each step's page. */
export async function workThrough(page: Page, gauges: readonly string[], until?: string): Promise<StepSeen[]> {
  const seen: StepSeen[] = []
  let fills = 0
  for (let step = 0; step < 30; step++) {
    const title = await page.getByRole('main').getByRole('heading', { level: 1 }).innerText()
    if (until && title.startsWith(until)) return seen
    const isFill = title.startsWith('Air:')
    seen.push(await tickStep(page, gauges[isFill ? fills : 0] ?? ''))
    if (isFill) fills += 1
    const next = page.getByRole('button', { name: 'Next', exact: true })
    const prove = page.getByRole('main').getByRole('link', { name: 'Prove' })
    await next.or(prove).first().waitFor()
    if ((await prove.count()) > 0) {
      await prove.click()
      return seen
    }
    await next.click()
    await expect.poll(() => page.getByRole('main').getByRole('heading', { level: 1 }).innerText()).not.toBe(title)
  }
  throw new Error('the work never came to its last step')
}
