/** One whole job on an air fork, by role and label, as a technician would tap or key it. */
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { fingerOn, type Hand } from './hand.ts'

export const chapterLink = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Chapters of this job' }).getByRole('link', { name: new RegExp(name) })

/** From the first page into the demo workshop. */
export async function enterDemo(page: Page, address: string, hand: Hand = fingerOn(page)): Promise<void> {
  await page.goto(address)
  await hand.press(page.getByRole('button', { name: 'Look around the demo workshop' }))
  await page.getByRole('link', { name: /Take in a unit/ }).waitFor()
}

/** Take in a known unit with what the rider says; ends on the new job's first chapter. */
export async function takeIn({ page, press, write }: Hand, label: string, words: string): Promise<void> {
  await press(page.getByRole('link', { name: /Take in a unit/ }))
  await write(page.getByLabel('Find it by label, unit or rider'), label)
  await press(page.getByRole('button', { name: `Take in ${label}` }))
  await write(page.getByLabel(/What the rider says/), words)
  await press(page.getByRole('button', { name: 'Open the job' }))
  await page.getByRole('heading', { name: 'As it came in' }).waitFor()
}

/** The snapshot in its order. */
export async function keepSnapshot({ page, press, write, choose }: Hand, pump: string): Promise<void> {
  const keep = page.getByRole('button', { name: 'Keep', exact: true })
  await write(page.getByRole('textbox', { name: 'Length at rest' }), '164')
  await press(keep)
  await write(page.getByRole('textbox', { name: 'Where the ring stands' }), '138')
  await press(keep)
  await press(page.getByRole('button', { name: /^Not known: Photos/ }))
  await write(page.getByRole('textbox', { name: 'Not known, because' }), 'no camera at the bench')
  await press(page.getByRole('button', { name: 'Keep as not known' }))
  await choose(page.getByRole('radio', { name: new RegExp(`^${pump}`) }))
  await write(page.getByRole('textbox', { name: 'Pressure', exact: true }), '80psi')
  await press(keep)
  await write(page.getByRole('textbox', { name: /^Rebound/ }), '8')
  await press(keep)
  await press(page.getByRole('link', { name: /Look over/ }).last())
}

/** Every part of the chassis sound. */
export async function chassisSound({ page, press }: Hand): Promise<void> {
  for (const part of ['Crown', 'Steerer', 'Stanchions', 'Lower legs', 'Dropouts'])
    await press(page.getByRole('button', { name: `${part} sound` }))
}

export async function agreePlan({ page, press }: Hand): Promise<void> {
  await press(chapterLink(page, 'Plan'))
  await press(page.getByRole('button', { name: 'Yes to all of it' }))
  await page.getByRole('heading', { name: 'Agreed', exact: true }).waitFor()
}

/** Works the starting pressure out and writes it down for the fill; gives what stood on the page. */
export async function writeStartPressure({ page, press }: Hand): Promise<string> {
  await press(chapterLink(page, 'Set up'))
  await page.getByText('Start with').waitFor()
  const seen = await page.getByRole('main').innerText()
  await press(page.getByRole('button', { name: 'Write these down' }))
  await page.getByText(/Written for the fill/).waitFor()
  return seen
}

/** What is read at a step, by the words of its field. */
const readings: readonly [RegExp, string][] = [
  [/^Drained, left/, '8 ml'],
  [/^Drained, right/, '7 ml'],
  [/^Filled, left/, '10 ml'],
  [/^Filled, right/, '10 ml'],
  [/^Measured travel/, '150 mm'],
  [/^Oil: name/, 'Bench oil, 46 mm²/s, batch 7'],
]

export interface StepSeen {
  title: string
  /** Everything that stands on the step's page, before and after its ticks. */
  text: string
  after: string
}

/** Ticks the step that is open: reads what is asked, says what must be said, ticks each leg. */
async function tickStep({ page, press, write }: Hand, gauge: string): Promise<StepSeen> {
  const main = page.getByRole('main')
  const title = await main.getByRole('heading', { level: 1 }).innerText()
  const text = await main.innerText()
  if (title === 'New foam rings and wipers in') await page.clock.fastForward('05:30') // they soak for five minutes
  for (let round = 0; round < 12; round++) {
    for (const [label, value] of readings) {
      const field = main.getByRole('textbox', { name: label })
      if ((await field.count()) > 0 && (await field.first().inputValue()) === '') await write(field.first(), value)
    }
    const shows = main.getByRole('textbox', { name: 'Gauge shows' })
    if ((await shows.count()) > 0 && (await shows.inputValue()) === '') await write(shows, gauge)
    const open = main.locator('[role=checkbox][aria-checked=false][aria-disabled=false]')
    if ((await open.count()) === 0) break
    await press(open.first())
    await page.waitForTimeout(60)
  }
  return { title, text, after: await main.innerText() }
}

/** Works from the step in hand to the last; gives what was seen on each step's page. */
export async function workThrough(hand: Hand, gauges: readonly string[], until?: string): Promise<StepSeen[]> {
  const { page, press } = hand
  const seen: StepSeen[] = []
  let fills = 0
  for (let step = 0; step < 30; step++) {
    const title = await page.getByRole('main').getByRole('heading', { level: 1 }).innerText()
    if (until && title.startsWith(until)) return seen
    const isFill = title.startsWith('Air:')
    seen.push(await tickStep(hand, gauges[isFill ? fills : 0] ?? ''))
    if (isFill) fills += 1
    const next = page.getByRole('button', { name: 'Next', exact: true })
    const prove = page.getByRole('main').getByRole('link', { name: 'Prove' })
    await next.or(prove).first().waitFor()
    if ((await prove.count()) > 0) {
      await press(prove)
      return seen
    }
    await press(next)
    await expect.poll(() => page.getByRole('main').getByRole('heading', { level: 1 }).innerText()).not.toBe(title)
  }
  throw new Error('the work never came to its last step')
}

export async function proveLength({ page, press, write }: Hand, length: string): Promise<void> {
  await write(page.getByRole('textbox', { name: 'Free length', exact: true }), length)
  await press(page.getByRole('button', { name: 'Write the free length' }))
}

/** A leak-down on a page whose clock was put in hand (`useBench`): the air settles, is read, rests, and is read again. */
export async function proveLeak({ page, press, write }: Hand, gauge: readonly [string, string]): Promise<string> {
  await press(chapterLink(page, 'Prove'))
  await page.clock.fastForward('16:00')
  await page.getByText('The air has settled.').waitFor()
  await write(page.getByRole('textbox', { name: 'Gauge, as it comes off' }), gauge[0])
  await press(page.getByRole('button', { name: 'Start the leak-down' }))
  const again = page.getByRole('textbox', { name: 'Gauge, put on again' })
  await again.waitFor()
  const expected = await page.getByText(/If nothing is lost it shows/).innerText()
  await page.clock.fastForward('10:30')
  await write(again, gauge[1])
  await press(page.getByRole('button', { name: 'Finish the leak-down' }))
  await page.getByText(/nothing was lost beyond/).waitFor()
  return expected
}

/** The setting as it is, and the sag from both directions. */
export async function writeSetting({ page, press, write }: Hand, sag: readonly [string, string]): Promise<void> {
  await press(chapterLink(page, 'Set up'))
  await press(page.getByRole('button', { name: 'Write down the setting' }))
  await page.getByText(/Setting written/).waitFor()
  await write(page.getByRole('textbox', { name: 'Lowered on, reads', exact: true }), sag[0])
  await write(page.getByRole('textbox', { name: 'Coming up to rest, reads', exact: true }), sag[1])
  await press(page.getByRole('button', { name: 'Write the sag' }))
}

export async function handOver({ page, press, write }: Hand, name: string, initials: string): Promise<void> {
  await press(chapterLink(page, 'Hand over'))
  const back = page.getByRole('main').locator('[role=checkbox][aria-checked=false]')
  while ((await back.count()) > 0) {
    await press(back.first())
    await page.waitForTimeout(60)
  }
  await write(page.getByRole('textbox', { name: 'Name', exact: true }), name)
  await write(page.getByRole('textbox', { name: 'Initials', exact: true }), initials)
  await press(page.getByRole('main').getByRole('button', { name: 'Hand over' }))
  await page.getByRole('heading', { name: /Handed over/ }).waitFor()
}
