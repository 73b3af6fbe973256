/** What a screen reader meets on each page, in its order: the accessibility tree as it was last looked at and found right. */
import { describe, expect, it } from 'vitest'
import { addressesOf } from './src/addresses.ts'
import { useBench } from './src/bench.ts'
import { enterDemo } from './src/walk.ts'

describe('reading order', () => {
  const bench = useBench()

  it('every page reads as it did when it was looked at', async () => {
    const { page, address } = bench
    const snapshot = async (name: string): Promise<void> => {
      // What is worked out or loaded after the first frame has come when the page reads alike for a while.
      let [last, alike] = ['', 0]
      await expect
        .poll(
          async () => {
            const here = await page.locator('body').ariaSnapshot()
            alike = here === last ? alike + 1 : 0
            last = here
            return alike
          },
          { interval: 150, timeout: 20_000 },
        )
        .toBeGreaterThanOrEqual(4)
      const told = last.replaceAll(/[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12}/g, 'ID')
      await expect.soft(`${told}\n`, name).toMatchFileSnapshot(`reading-order/${name}.txt`)
    }
    await page.goto(address)
    await page.getByRole('button').first().waitFor()
    await snapshot('start')
    await enterDemo(page, address)
    for (const [name, place] of await addressesOf(page, address)) {
      await page.goto(place)
      await page.getByRole('main').first().waitFor()
      await snapshot(name)
    }
  })
})
