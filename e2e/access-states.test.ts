/** Axe on what a page becomes: open leaves, refusals, no network, a contested job. */
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { findings } from './src/access-findings.ts'
import { useBench } from './src/bench.ts'
import { fillOutOfTurn } from './src/out-of-turn.ts'
import { enterDemo } from './src/walk.ts'

type Found = Record<string, string[]>
/** Looks at the page as it stands now. */
const lookInto = (page: Page, found: Found) => async (name: string) => {
  await page.waitForTimeout(200)
  const here = await findings(page)
  if (here.length > 0) found[name] = here
}

describe('access, of what a page becomes', () => {
  const bench = useBench({ theme: 'dark' })

  it('axe finds nothing while something is open, refused or offline', async () => {
    const { page, address } = bench
    const found: Found = {}
    const look = lookInto(page, found)
    await page.goto(address)
    await page.getByRole('button', { name: 'Start my workshop' }).click()
    await page.getByRole('button', { name: 'Begin' }).click()
    await page.getByText('need a name').first().waitFor()
    await look('names missing')

    await enterDemo(page, address)
    const working = (await page.getByRole('link', { name: /U09/ }).first().getAttribute('href')) ?? ''

    await page.goto(`${address}${working}/work`)
    await page.locator('[data-worked-out]:visible').first().click()
    await page.getByRole('dialog').locator('.workings').waitFor()
    await look('where a figure comes from')
    await page.keyboard.press('Escape')

    await page.goto(`${address}${working}/set-up`)
    await page.getByRole('button', { name: 'Table' }).first().click()
    await page.getByRole('table').first().waitFor()
    await look('the table behind a drawing')

    await page.goto(`${address}/take-in`)
    await page.getByRole('textbox', { name: 'Mass with kit' }).fill('900')
    await page.getByRole('textbox', { name: 'Find it by label, unit or rider' }).fill('nothing of that name')
    await look('unusual, and not found')

    await page.goto(`${address}/search`)
    await page.getByRole('textbox', { name: 'Unit, rider, label or job' }).fill('fork')
    await page.getByRole('link', { name: /U01/ }).first().waitFor()
    await look('found')

    await page.goto(`${address}/riders`)
    await page.locator('main a.row').first().click()
    await page.getByRole('button', { name: 'Take this rider out' }).click()
    await page.getByRole('dialog').waitFor()
    await look('asked before a rider is taken out')
    await page.keyboard.press('Escape')

    await page.goto(`${address}${working}/book`)
    await page.context().setOffline(true)
    await page.getByRole('textbox', { name: 'Note' }).fill('written without a network')
    await page.getByRole('button', { name: 'Write the note' }).click()
    await page.getByText('kept here').first().waitFor()
    await look('kept here')
    await page.keyboard.press('ControlOrMeta+K')
    await page.getByRole('textbox', { name: 'Unit, rider, label or job' }).fill('U09')
    await page.getByText('No network').first().waitFor()
    await look('search without the network')
    await page.getByRole('link', { name: /kept/ }).click()
    await page.getByRole('heading', { name: 'This station' }).waitFor()
    await look('station with unsent lines')
    await page.context().setOffline(false)

    await fillOutOfTurn(address, decodeURIComponent(working.split('/').at(-1) ?? ''), '2026-06-03T10:05:00.000Z')
    await page.goto(`${address}${working}/work`)
    await page.getByText('Entered without the network, and it does not fit').waitFor()
    await look('contested')
    expect(found).toEqual({})
  })
})
