/** Work is read at arm's length: its figures and ticks on a tablet of 1024 × 768, 10 inches. */
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ServerProcess, serverProcess } from './src/server-process.ts'
import { openTablet, type Tablet } from './src/tablet.ts'
import { enterDemo } from './src/walk.ts'

/** A display of 10 inches, 4 : 3, is 8 inches wide: 1,024 px over 203 mm. */
const perMillimetre = 1024 / 203.2
/** 12 mm. */
const least = 12 * perMillimetre

/** Heights of the figures' digits as the font draws them [px]. */
const digitHeights = (page: Page): Promise<number[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.quantity.step, .quantity.second')].map((figure) => {
      const style = getComputedStyle(figure)
      const context = document.createElement('canvas').getContext('2d')
      if (!context) throw new Error('no canvas')
      context.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`
      return context.measureText('5').actualBoundingBoxAscent
    }),
  )

describe('work at arm’s length', () => {
  let server: ServerProcess
  let tablet: Tablet
  beforeAll(async () => {
    server = await serverProcess({ now: '2026-06-03T10:00:00Z' })
    await server.start()
    tablet = await openTablet(await mkdtemp(join(tmpdir(), 'legwork-profile-')))
  })
  afterAll(async () => {
    await tablet?.close()
    await server?.kill()
  })

  it('every figure is 12 mm high or more; both legs’ ticks and the bar are in view at the foot bolts', async () => {
    const { page } = tablet
    await enterDemo(page, server.address)
    // The demo's fork on the bench: the left foot is torqued, the right one is not.
    const href = await page.getByRole('link', { name: /U09/ }).first().getAttribute('href')
    const main = page.getByRole('main')
    // Whoever looks at another one's job sees both ticks as well; taking it over is asked in the title block.
    await page.goto(`${server.address}${href}/work`)
    await page.getByRole('button', { name: 'Sunniva Raghavold' }).waitFor()
    for (const who of ['the one who looks', 'the one who works']) {
      if (who === 'the one who works') {
        await page.goto(`${server.address}/hands`)
        await page.getByText('Sunniva Raghavold').first().click()
        await page.goto(`${server.address}${href}/work`)
      }
      const shut = await main.getByRole('button', { name: 'Right leg first' }).boundingBox()
      const tick = await main.getByRole('checkbox', { name: 'Right leg', exact: true }).boundingBox()
      expect((tick?.y ?? 768) + (tick?.height ?? 0), who).toBeLessThanOrEqual(shut?.y ?? 0)
    }
    await main.getByRole('heading', { level: 1, name: 'Torque the foot fasteners' }).waitFor()
    const bar = await main.getByRole('button', { name: 'Right leg first' }).boundingBox()
    for (const name of ['Left leg', 'Right leg']) {
      const tick = await main.getByRole('checkbox', { name, exact: true }).boundingBox()
      expect(tick, name).not.toBeNull()
      expect((tick?.y ?? 0) + (tick?.height ?? 0), name).toBeLessThanOrEqual(bar?.y ?? 0)
    }
    expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBeLessThanOrEqual(768)
    // Two torques: the wrench's is the one to set, so it alone stands in a window, and it is the larger.
    const set = main.locator('.scale-window')
    expect(await set.allInnerTexts()).toEqual([expect.stringMatching(/^4\.9\s*N·m$/)])
    const [arrives = 0, wrench = 0] = await digitHeights(page)
    expect(wrench).toBeGreaterThan(1.25 * arrives)
    // A gate with no way round stands shut behind the step in hand: no air before both feet are torqued.
    await main.getByRole('img', { name: /Step 13 of 17\. A gate is shut behind step 13\./ }).waitFor()

    const seen: number[] = []
    for (let step = 13; step > 1; step--) {
      const heights = await digitHeights(page)
      for (const height of heights) expect(height, `step ${step}`).toBeGreaterThanOrEqual(least)
      seen.push(...heights)
      await main.getByRole('button', { name: `Back to step ${step - 1}` }).click()
    }
    // Torque at the nut and at the wrench, oil of two legs in and out, clearance, clicks: not an empty look.
    expect(seen.length).toBeGreaterThanOrEqual(8)
  })
})
