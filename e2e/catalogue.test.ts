/** Every text on every page comes from the catalogue: in the pseudo voice each stands in brackets. */
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'

/** Visible text that is neither in brackets nor marked as data (`translate="no"`). */
async function strayTexts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const stray: string[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    let depth = 0
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      let outside = ''
      for (const letter of node.nodeValue ?? '') {
        if (letter === '⟦') depth += 1
        else if (letter === '⟧') depth -= 1
        else if (depth === 0) outside += letter
      }
      const parent = node.parentElement
      // What a hand wrote or may write, and a drawing's numbers with their measure, are data.
      if (!parent || parent.closest('[translate="no"], script, style, title, textarea')) continue
      const least = parent.closest('svg') ? /\p{L}{4,}/u : /\p{L}/u
      if (least.test(outside) && parent.checkVisibility()) stray.push(outside.trim())
    }
    return stray
  })
}

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
      await page.goto(`${address}?voice=pseudo`)
      await page.getByRole('main').first().waitFor()
      await page.waitForTimeout(250)
      const found = await strayTexts(page)
      if (found.length > 0) stray[name] = found
    }
    expect(stray).toEqual({})
  })
})
