/** Every page in both themes: no finding of axe's WCAG 2.2 A and AA rules. */
import { describe, expect, it } from 'vitest'
import { findings } from './src/access-findings.ts'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'
import { enterDemo } from './src/walk.ts'

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
