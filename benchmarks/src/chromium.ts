import { readFileSync } from 'node:fs'
import { chromium } from 'playwright-core'
import type { EngineTimings } from './engine-timings.ts'

/** The bundled engine timed inside a page of Debian's Chromium; the bundle puts `engineBench` on the page. */
export async function inChromium(bundle: string): Promise<{ version: string; timings: EngineTimings }> {
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  })
  try {
    const page = await browser.newPage()
    await page.goto('about:blank')
    await page.addScriptTag({ content: readFileSync(bundle, 'utf8') })
    const timings = await page.evaluate<EngineTimings>('engineBench.engineTimings()')
    return { version: browser.version(), timings }
  } finally {
    await browser.close()
  }
}
