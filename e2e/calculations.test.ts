/** The Calculations pages: what they show is what the API answers, for every calculation there is. */
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { calculations } from '@legwork/contract/calculations/index.ts'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { findings } from './src/access-findings.ts'
import { type ServerProcess, serverProcess } from './src/server-process.ts'
import { differences, shownAnswers, workOut } from './src/shown-answers.ts'
import { strayTexts } from './src/stray-texts.ts'
import { openTablet, type Tablet } from './src/tablet.ts'
import { enterDemo } from './src/walk.ts'

/** Their answer is a few numbers that no place on a drawing makes clearer. */
const toldInLines = [
  'coil-rate',
  'wire-rate',
  'side-friction',
  'bolt',
  'thread-strip',
  'saybolt',
  'damping-ratio',
  'rock',
  'moving-time',
  'wear-hours',
  'due',
]

describe('the calculations', () => {
  let server: ServerProcess
  let tablet: Tablet
  beforeAll(async () => {
    server = await serverProcess({ now: '2026-06-03T10:00:00Z' })
    await server.start()
    tablet = await openTablet(await mkdtemp(join(tmpdir(), 'legwork-profile-')))
    await enterDemo(tablet.page, server.address)
  })
  afterAll(async () => {
    await tablet?.close()
    await server?.kill()
  })

  async function answerOf(name: string, input: unknown): Promise<Record<string, unknown>> {
    const answer = await fetch(`${server.address}/api/calc/${name}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(input),
    })
    return answer.json()
  }

  it('stand in their groups, each with its title and summary', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations`)
    await page.getByRole('heading', { name: 'Calculations' }).waitFor()
    for (const { name, title, summary } of Object.values(calculations)) {
      const row = page.locator(`a[href="/calculations/${name}"]`)
      expect(await row.innerText()).toContain(title)
      expect(await row.innerText()).toContain(summary)
    }
    const groups = await page.getByRole('heading', { level: 2 }).allInnerTexts()
    expect(groups).toEqual([...new Set(Object.values(calculations).map(({ group }) => group))].sort(byContract))
  })

  it.each(Object.values(calculations))('$name shows what the API answers to its example', async ({ name, example }) => {
    const { page } = tablet
    // As a press on its row turns to it: opening the whole app again for each would take a minute.
    await page.evaluate((to) => history.pushState(null, '', to), `/calculations/${name}`)
    await page.getByRole('heading', { level: 1, name: calculations[name]?.title ?? '', exact: true }).waitFor()
    await workOut(page)
    const shown = await shownAnswers(page)
    expect(Object.keys(shown).length).toBeGreaterThan(0)
    expect(differences(shown, await answerOf(name, example))).toEqual([])
    // A picture says in words what it shows, for whoever does not see it.
    const pictures = page.locator('.calc-picture').getByRole('img')
    expect((await pictures.count()) > 0 || name === 'diagnose').toBe(!toldInLines.includes(name))
    for (const picture of await pictures.all())
      expect((await picture.getAttribute('aria-label'))?.length).toBeGreaterThan(12)
  })

  it('an example says that it is one until something was asked', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations/torque`)
    await page.getByText('An example, invented').waitFor()
    await workOut(page)
    expect(await page.getByText('An example, invented').count()).toBe(0)
  })

  it('takes a spring from a sheet, and shows where its dimensions are measured', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations/pressure-for-sag`)
    const sheet = page.getByLabel('From a sheet')
    await expect.poll(() => sheet.locator('option').count()).toBeGreaterThan(5)
    const before = await page.getByLabel('Bore', { exact: true }).inputValue()
    await sheet.selectOption({ index: 3 })
    await expect.poll(() => page.getByLabel('Positive chamber', { exact: true }).inputValue()).not.toBe('197')
    expect(Number(await page.getByLabel('Bore', { exact: true }).inputValue())).toBeGreaterThan(20)
    expect(before).toBe('32')
    await workOut(page)
    await page.getByText('Where these are measured').click()
    await page.getByRole('img', { name: /An air leg cut open/ }).waitFor()
    await page.getByRole('link', { name: 'The heavy curve as a table' }).click()
    await page.getByRole('heading', { level: 1, name: 'Force over the stroke' }).waitFor()
    await page.getByText('Point by point').waitFor()
  })

  it('an address opens the same numbers again, in another window and after a reload', async () => {
    const { page, context } = tablet
    await page.goto(`${server.address}/calculations/sag`)
    await page.getByLabel('Load along it').fill('400')
    await workOut(page)
    const first = await shownAnswers(page)
    const address = page.url()
    expect(address).toContain('load:400_N')
    const other = await context.newPage()
    await other.goto(address)
    await other.getByText('Rate there').waitFor()
    expect(await shownAnswers(other)).toEqual(first)
    expect(await other.getByLabel('Load along it').inputValue()).toBe('400')
    await other.reload()
    await other.getByText('Rate there').waitFor()
    expect(await shownAnswers(other)).toEqual(first)
    await other.close()
  })

  it('the back button brings the question before', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations/air-pressure`)
    await workOut(page)
    const before = await shownAnswers(page)
    await page.getByRole('textbox', { name: 'Altitude' }).fill('3 km')
    await workOut(page)
    expect(await shownAnswers(page)).not.toEqual(before)
    await page.goBack()
    await expect.poll(() => shownAnswers(page)).toEqual(before)
    expect(await page.getByRole('textbox', { name: 'Altitude' }).inputValue()).toBe('2000')
  })

  it('a damaged address says so', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations/torque?input=wanted:5:5`)
    await page.getByText('The address of this page is damaged').waitFor()
  })

  it.each([
    ['sag', 'Load along it', '5 psi', 'load', 'a measure of force'],
    ['sag', 'Bore', '8 mm', 'spring.shaft', 'Measure the shaft'],
    ['sag', 'Pressure', '', 'pressure', 'it must be'],
    ['viscosity', 'Viscosity, row 1', 'much', 'points[0].viscosity', 'You came'],
  ])('%s: %s written as "%s" is refused beside the field', async (name, label, text, field, says) => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations/${name}`)
    await page.getByLabel(label, { exact: true }).first().fill(text)
    await page.getByRole('button', { name: 'Work it out' }).click()
    const refusal = page.locator(`[data-field="${field}"]`).getByRole('alert').filter({ hasText: /\S/ })
    await refusal.waitFor()
    const answer = await answerOf(name, await shownInput(field, text, name))
    expect(answer.errors).toEqual(expect.arrayContaining([expect.objectContaining({ field })]))
    expect(await refusal.innerText()).toMatch(says === 'You came' ? /Came "much"/ : new RegExp(says))
    expect(await page.getByText('Not worked out.').first().innerText()).toMatch(/place/)
  })

  /** The example with one place changed, as the form sends it. */
  async function shownInput(field: string, text: string, name: string): Promise<unknown> {
    const input: Record<string, unknown> = structuredClone(calculations[name]?.example ?? {})
    if (field === 'load') return { ...input, load: text }
    if (field === 'pressure') return { ...input, pressure: undefined }
    if (field === 'spring.shaft') return { ...input, spring: { ...Object(input.spring), bore: text } }
    return { ...input, points: [{ temperature: '40 °C', viscosity: text }] }
  }

  it('takes measures of any kind, shows them in the reader’s own', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/hands`)
    for (const [group, measure] of [
      ['Length', 'in'],
      ['Pressure', 'bar'],
      ['Temperature', '°F'],
    ] as const) {
      const choice = page.getByRole('group', { name: group }).getByRole('radio', { name: measure, exact: true })
      await choice.click()
      // Written before the next is changed.
      await expect.poll(() => choice.isChecked()).toBe(true)
    }
    await page.goto(`${server.address}/calculations/sag`)
    // 32 mm = 1.2598 in; 88 psi = 6.0674 bar.
    expect(await page.getByLabel('Bore', { exact: true }).inputValue()).toBe('1.2598')
    expect(await page.getByLabel('Pressure', { exact: true }).inputValue()).toBe('6.0674')
    await page.getByLabel('Pressure', { exact: true }).fill('80psi')
    await workOut(page)
    const shown = await shownAnswers(page)
    expect(shown.stroke?.unit).toBe('in')
    expect(differences(shown, await answerOf('sag', { ...calculations.sag?.example, pressure: '80psi' }))).toEqual([])
    await page.getByLabel('Pressure', { exact: true }).fill('5,5')
    await workOut(page)
    const barely = await answerOf('sag', { ...calculations.sag?.example, pressure: '5.5 bar' })
    expect(differences(await shownAnswers(page), barely)).toEqual([])
  })

  it.each(['press-test', 'diagnose', 'doubt'])(
    '%s, answered: axe finds nothing, every text is from the catalogue',
    async (name) => {
      const { page } = tablet
      await page.goto(`${server.address}/calculations/${name}?voice=pseudo`)
      await page.getByRole('button', { name: /Work it out/ }).click()
      await page.locator('[data-answered="now"]').waitFor()
      expect(await strayTexts(page)).toEqual([])
      expect(await findings(page)).toEqual([])
    },
  )

  it('an error in common with others is given by its name, and has a share of its own', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations/doubt`)
    const load = page.getByRole('group', { name: 'Load along it' })
    await load.getByText('in common', { exact: true }).click()
    await load.getByLabel('Name of the error').fill('scale 2')
    await load.getByLabel('Standard uncertainty').fill('10')
    await workOut(page)
    const { input } = Object(calculations.doubt?.example)
    const shared = { ...input, load: { value: '351 N', shared: { 'scale 2': '10 N' } } }
    const answer = await answerOf('doubt', { ...calculations.doubt?.example, input: shared })
    expect(Object(answer.pressure).shares['scale 2']).toBeGreaterThan(0.5)
    expect(differences(await shownAnswers(page), answer)).toEqual([])
    expect(await findings(page)).toEqual([])
  })

  it('a doubt takes degrees of freedom, and how it is spread between its ends', async () => {
    const { page } = tablet
    await page.goto(`${server.address}/calculations/doubt`)
    await page.getByRole('group', { name: 'Load along it' }).getByLabel('Degrees of freedom').fill('4')
    const bore = page.getByRole('group', { name: 'Bore' })
    await bore.getByText('ends in doubt too', { exact: true }).click()
    await bore.getByLabel('Each end ±').fill('0.02 mm')
    await workOut(page)
    const example = Object(calculations.doubt?.example)
    const { spring, load } = example.input
    const input = {
      ...example.input,
      spring: { ...spring, bore: { ...spring.bore, ends: '0.02 mm' } },
      load: { ...load, freedom: 4 },
    }
    expect(differences(await shownAnswers(page), await answerOf('doubt', { ...example, input }))).toEqual([])
    expect(await findings(page)).toEqual([])
  })

  it('draws doubt beside the page: how far it is can be seen, and it can be stopped', async () => {
    const { page } = tablet
    const example = calculations.drop?.example
    const asked = {
      calc: 'drop',
      input: { ...example, dropHeight: { value: '0.4 m', u: '0.02 m' } },
      outputs: ['deepest'],
      draws: 2500,
    }
    await page.goto(`${server.address}/calculations/doubt?input=${encodeURIComponent(JSON.stringify(asked))}`)
    await page.getByText(/Drawing, \d+ % done/).waitFor()
    await page.getByRole('button', { name: 'Stop' }).click()
    await page.getByText('Stopped before the end').waitFor()
    expect(await page.locator('[data-answered]').count()).toBe(0)
  })

  it('works with the server dead', async () => {
    const { page } = tablet
    const expected = await answerOf('torque', calculations.torque?.example)
    await page.goto(`${server.address}/calculations`)
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready
    })
    await page.reload()
    await page.getByRole('heading', { name: 'Calculations' }).waitFor()
    await server.kill()
    await page.reload()
    await page.getByRole('link', { name: /Wrench setting/ }).click()
    await workOut(page)
    expect(differences(await shownAnswers(page), expected)).toEqual([])
  })
})

const order = [
  'Spring and load',
  'Air',
  'Leak',
  'Torque',
  'Oil',
  'Damping',
  'Wear',
  'Bench tests',
  'Hours and life',
  'Faults',
  'Doubt',
]
const byContract = (one: string, other: string): number => order.indexOf(one) - order.indexOf(other)
