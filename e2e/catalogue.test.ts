/** Every text on every page comes from the catalogue: in the pseudo voice each stands in brackets. */
import { describe, expect, it } from 'vitest'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'
import { strayTexts } from './src/stray-texts.ts'

describe('texts', () => {
  const bench = useBench()

  it('finds a text that is not from the catalogue', async () => {
    const { page } = bench
    await page.goto(`${bench.address}/?voice=pseudo`)
    await page.getByRole('button').first().waitFor()
    await page.evaluate(() => document.body.append('An odd text'))
    expect(await strayTexts(page)).toContain('An odd text')
  })

  it('no page has a text outside the catalogue', async () => {
    const { page } = bench
    await page.goto(`${bench.address}/?voice=pseudo`)
    expect(await strayTexts(page)).toEqual([])
    await page.getByRole('button', { name: /demo workshop/ }).click()
    await page.getByRole('link', { name: /Take in a unit/ }).waitFor()
    const stray: Record<string, string[]> = {}
    for (const [name, address] of await addressesOf(page, bench.address)) {
      const asked = new URL(address)
      asked.searchParams.set('voice', 'pseudo')
      await page.goto(asked.href)
      await page.getByRole('main').first().waitFor()
      await page.waitForTimeout(250)
      const found = await strayTexts(page)
      if (found.length > 0) stray[name] = found
    }
    expect(stray).toEqual({})
  })
})
