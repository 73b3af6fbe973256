/** Every page: no finding of axe's WCAG 2.2 A and AA rules, no target too small for a glove, none that has to be pushed sideways. */
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { findings } from './src/access-findings.ts'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'
import { sizes } from './src/tablet.ts'
import { tooSmall } from './src/too-small.ts'
import { enterDemo } from './src/walk.ts'

/** Width that a page 320 px wide needs: WCAG 2.2, 1.4.10, as it is when it is read at four times its size. */
async function neededAt320(page: Page): Promise<number> {
  await page.setViewportSize({ width: 320, height: sizes.phone.height })
  await page.waitForTimeout(100)
  const needed = await page.evaluate(() =>
    Math.max(
      ...[document.documentElement, ...document.querySelectorAll('main > .page')].map(({ scrollWidth }) => scrollWidth),
    ),
  )
  await page.setViewportSize(sizes.phone)
  return needed
}

// Colours hang on the theme and the build of a page on its size, so each is met once with the other.
describe.each([
  ['light', 'tablet'],
  ['dark', 'phone'],
] as const)('access, %s on a %s', (theme, size) => {
  const bench = useBench({ theme, size })

  it('finds a target that is too small', async () => {
    const { page, address } = bench
    await page.goto(address)
    await page.getByRole('button').first().waitFor()
    await page.evaluate(() => {
      const small = document.createElement('button')
      small.textContent = 'Small'
      small.style.cssText = 'position:fixed;top:0;left:300px;width:30px;height:30px;min-height:0;padding:0'
      document.body.append(small)
    })
    expect((await tooSmall(page)).join()).toContain("'Small'")
  })

  it('axe finds nothing on any page, every target is 48 px, and no page is wider than its screen', async () => {
    const { page } = bench
    const found: Record<string, string[]> = {}
    const look = async (name: string): Promise<void> => {
      const here = [...(await findings(page)), ...(await tooSmall(page))]
      const needed = size === 'phone' ? await neededAt320(page) : 0
      if (needed > 320) here.push(`${needed} px wide`)
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
    if (size === 'phone') {
      await page.goto(bench.address)
      await page.getByRole('button', { name: 'Places' }).click()
      await page.getByRole('dialog').waitFor()
      await look('places')
    }
    expect(found).toEqual({})
  })
})
