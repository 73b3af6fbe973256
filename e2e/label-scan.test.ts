/** A label at the bench: its code turns to the unit's job or card; what stands on it takes the unit in. */
import { describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { enterDemo } from './src/walk.ts'

/** This browser has no reader of codes: one is put there that reads what the test says. */
const reader = (says: string) => `
  globalThis.codeSays = ${JSON.stringify(says)}
  globalThis.BarcodeDetector = class {
    async detect() { return globalThis.codeSays ? [{ rawValue: globalThis.codeSays }] : [] }
  }`

describe('a label', () => {
  const bench = useBench()

  it('scanned on the Bench turns to its job there, or to its card', async () => {
    const { page, address } = bench
    await page.addInitScript(reader(''))
    await enterDemo(page, address)
    const picture = await page.screenshot({ clip: { x: 0, y: 0, width: 8, height: 8 } })
    const scan = async (says: string) => {
      await page.evaluate((text) => Reflect.set(globalThis, 'codeSays', text), says)
      await page.getByLabel('Scan a label').setInputFiles({ name: 'label.png', mimeType: 'image/png', buffer: picture })
    }
    await scan('')
    await page.getByText('No code could be read there.').waitFor()
    await scan('http://elsewhere.example/units/0196c000-0000-7000-8000-00000000000a')
    await page.getByText('That code names no unit of this shop.').waitFor()

    const cardOf = async (label: string): Promise<string> => {
      await page.goto(`${address}/units`)
      const row = page.getByRole('link', { name: new RegExp(label) })
      const href = (await row.first().getAttribute('href')) ?? ''
      await page.goto(address)
      return href
    }
    const onBench = await cardOf('U09')
    await scan(`${address}${onBench}`)
    await page.getByRole('navigation', { name: 'Chapters of this job' }).waitFor()
    const away = await cardOf('U12')
    await scan(`${address}${away}`)
    await page.getByRole('link', { name: 'Take it in' }).waitFor()
    expect(new URL(page.url()).pathname).toBe(away)
  })

  it('typed whole picks its unit, with nothing more to press', async () => {
    const { page, address } = bench
    await page.goto(`${address}/take-in`)
    await page.getByLabel('Find it by label, unit or rider').fill('u 02')
    await page.getByRole('button', { name: 'Take in U02', pressed: true }).waitFor()
    // Its rider comes along: only the mass is asked again.
    await page.getByRole('textbox', { name: 'Mass with kit' }).waitFor()
    expect(await page.getByRole('textbox', { name: 'Mass with kit' }).inputValue()).toBe('61.0')
    expect(await page.getByRole('textbox', { name: 'Share on the front wheel' }).isVisible()).toBe(false)
    await page.getByText('standing, hips over the cranks · 40 % in front · 7 h a week').click()
    await page.getByRole('textbox', { name: 'Share on the front wheel' }).waitFor()
  })
})
