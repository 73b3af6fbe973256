import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** What axe finds on a page by the rules of WCAG 2.2, A and AA. */
export async function findings(page: Page): Promise<string[]> {
  await page.evaluate(axeSource)
  const results: AxeResults = await page.evaluate(() =>
    // axe puts itself on the window of the page it is loaded into.
    (globalThis as unknown as { axe: { run: (options: object) => Promise<AxeResults> } }).axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'],
    }),
  )
  return results.violations.flatMap((rule) => rule.nodes.map((node) => `${rule.id}: ${node.target.join(' ')}`))
}
