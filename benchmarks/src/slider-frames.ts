/** The app itself on its own server: what a slider of Set up costs from the finger to the finished frame. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type CDPSession, chromium, type Page } from 'playwright-core'

/** Of all frames of one slider [ms]. */
export interface FrameTimes {
  readonly frames: number
  readonly median: number
  readonly p95: number
  readonly slowest: number
}

export interface SliderFrames {
  /** Script from the finger to the frame: drawing, chart and numbers. */
  readonly stroke: FrameTimes
  /** A what-if changes the spring itself: every curve and every shape anew. */
  readonly whatIf: FrameTimes
  /** Styles and layout of the same frames, not script. */
  readonly strokeLayout: FrameTimes
}

const moves = 240
const presses = 120

async function freePort(): Promise<number> {
  const probe = createServer()
  probe.listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const address = probe.address()
  probe.close()
  await once(probe, 'close')
  return typeof address === 'object' && address ? address.port : 0
}

async function answers(address: string, server: ChildProcess): Promise<void> {
  for (let attempt = 0; attempt < 400; attempt += 1) {
    if (server.exitCode !== null) throw new Error(`the server ended with ${server.exitCode}; is cli/dist built?`)
    const answer = await fetch(`${address}/healthz`).catch(() => null)
    if (answer?.ok) return
    await new Promise((resume) => setTimeout(resume, 50))
  }
  throw new Error(`no answer from ${address} in 20 s`)
}

function timesOf(each: readonly number[]): FrameTimes {
  const sorted = [...each].sort((a, b) => a - b)
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN
  return { frames: sorted.length, median: at(0.5), p95: at(0.95), slowest: at(1) }
}

interface Spent {
  script: number
  layout: number
}

/** All script and all layout of the page so far [ms], by Chromium's own count. */
async function spent(session: CDPSession): Promise<Spent> {
  const { metrics } = await session.send('Performance.getMetrics')
  const of = (name: string) => 1000 * (metrics.find((one) => one.name === name)?.value ?? Number.NaN)
  return { script: of('ScriptDuration'), layout: of('LayoutDuration') + of('RecalcStyleDuration') }
}

/** Acts, waits for the frame after the next one, and counts what went by; the waiting itself counts as script too. */
async function frame(page: Page, session: CDPSession, act: () => Promise<void>): Promise<Spent> {
  const before = await spent(session)
  await act()
  await page.evaluate('new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))')
  const after = await spent(session)
  return { script: after.script - before.script, layout: after.layout - before.layout }
}

async function setUpOf(page: Page, address: string): Promise<void> {
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around the demo workshop' }).click()
  const job = page.getByRole('link', { name: /U09/ }).first()
  await job.waitFor()
  await page.goto(`${address}${await job.getAttribute('href')}/set-up`)
  await page.getByRole('slider').first().waitFor()
}

async function onStroke(page: Page, session: CDPSession): Promise<Spent[]> {
  const paper = page.locator('svg.cutaway')
  const box = await paper.boundingBox()
  if (!box) throw new Error('Set up shows no drawing')
  const y = box.y + box.height / 2
  const x = (step: number) => box.x + box.width * (0.3 + 0.25 * (0.5 - 0.5 * Math.cos(step / 7)))
  await page.mouse.move(x(0), y)
  await page.mouse.down()
  const frames: Spent[] = []
  for (let step = 1; step <= moves; step += 1) {
    frames.push(await frame(page, session, () => page.mouse.move(x(step), y)))
  }
  await page.mouse.up()
  // The first ones are compiled while they run; a hand on a slider gives hundreds.
  return frames.slice(40)
}

async function onWhatIf(page: Page, session: CDPSession): Promise<Spent[]> {
  await page.getByRole('button', { name: 'What if' }).click()
  // Found once: looking for a button by its name is work of the test, and would be counted.
  const middleOf = async (name: string) => {
    const box = await page.getByRole('button', { name }).boundingBox()
    if (!box) throw new Error(`Set up shows no button '${name}'`)
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  }
  const more = await middleOf('altitude: more')
  const less = await middleOf('altitude: less')
  const frames: Spent[] = []
  for (let press = 0; press < presses; press += 1) {
    const { x, y } = Math.floor(press / 12) % 2 === 0 ? more : less
    frames.push(await frame(page, session, () => page.mouse.click(x, y)))
  }
  return frames.slice(20)
}

/** Starts the built server on an empty folder, opens Set up of a job of the demo, and moves its sliders. */
export async function sliderFrames(): Promise<SliderFrames> {
  const folder = mkdtempSync(join(tmpdir(), 'legwork-bench-'))
  const port = await freePort()
  const address = `http://127.0.0.1:${port}`
  const server = spawn(process.execPath, ['cli/dist/legwork.js', 'start'], {
    env: { ...process.env, LEGWORK_DATA: folder, LEGWORK_PORT: String(port) },
    stdio: 'ignore',
  })
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  })
  try {
    await answers(address, server)
    const page = await browser.newPage({ viewport: { width: 1024, height: 768 }, serviceWorkers: 'block' })
    await setUpOf(page, address)
    const session = await page.context().newCDPSession(page)
    // The page's own time on the processor: what other programs take between does not count.
    await session.send('Performance.setTimeDomain', { timeDomain: 'threadTicks' })
    await session.send('Performance.enable')
    const stroke = await onStroke(page, session)
    const whatIf = await onWhatIf(page, session)
    return {
      stroke: timesOf(stroke.map(({ script }) => script)),
      strokeLayout: timesOf(stroke.map(({ layout }) => layout)),
      whatIf: timesOf(whatIf.map(({ script }) => script)),
    }
  } finally {
    await browser.close()
    server.kill()
    rmSync(folder, { recursive: true, force: true })
  }
}
