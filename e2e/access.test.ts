/** Every page in both themes: no finding of axe's WCAG 2.2 A and AA rules. */
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'
import { enterDemo } from './src/walk.ts'

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

async function findings(page: Page): Promise<string[]> {
  await page.evaluate(axeSource)
  const results: AxeResults = await page.evaluate(() =>
    // axe puts itself on the window of the page it is loaded into.
    (globalThis as unknown as { axe: { run: (options: object) => Promise<AxeResults> } }).axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'],
    }),
  )
  return results.violations.flatMap((rule) => rule.nodes.map((node) => `${rule.id}: ${node.target.join(' ')}`))
}

describe.each(['light', 'dark'] as const)('access, %s', (theme) => {
  const bench = useBench({ theme })

  it('axe finds nothing on any page', async () => {
    const { page } = bench
    const found: Record<string, string[]> = {}
    const look = async (name: string): Promise<void> => {
      const here = await findings(page)
      if (here.length > 0) found[name] = here
    }
    await page.goto(bench.address)
    await page.getByRole('button').first().waitFor()
    await look('start')
    await enterDemo(page, bench.address)
    for (const [name, address] of await addressesOf(page, bench.address)) {
      await page.goto(address)
      await page.getByRole('main').first().waitFor()
      await page.waitForTimeout(200)
      await look(name)
    }
    expect(found).toEqual({})
  })
})
