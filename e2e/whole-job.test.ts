/** A browser walks one whole job by role and label, from the first page to the PDF. */
import { execFile } from 'node:child_process'
import { mkdtemp, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ServerProcess, serverProcess } from './src/server-process.ts'
import { openTablet, type Tablet } from './src/tablet.ts'
import { agreePlan, chapterLink, chassisSound, enterDemo, keepSnapshot, takeIn, workThrough } from './src/walk.ts'

const run = promisify(execFile)

/**
 * Pressure, load and pump reading for U01's rider from the formulas alone, in Python's own arithmetic: bisection on the
 * ideal-gas force of both chambers and of the air in two lower legs. Nothing of the app is used.
 */
const outside = `
import math, json
A = lambda d: math.pi / 4 * d * d
amb, x = 101325.0, 0.2 * 0.150
load = (82 * 0.42 + 5.05) * 9.80665 * math.sin(math.radians(65))
Vp, Vn, xe = 197e-6 - 10e-6, 31e-6, 0.0025
Ap, An = A(.032), A(.032) - A(.010)
AL, VL = A(.035) - A(.010), 205e-6 - 10e-6
def force(p):
    p0 = p + amb
    pos = p0 * Vp / (Vp - Ap * x)
    neg = p0 * Vp / (Vp - Ap * xe) * (Vn + An * xe) / (Vn + An * x)
    low = amb * VL / (VL - AL * x)
    return (pos - amb) * Ap - (neg - amb) * An + 2 * (low - amb) * AL
a, b = 0.0, 3e6
for _ in range(200):
    m = (a + b) / 2
    a, b = (m, b) if force(m) < load else (a, m)
psi = 6894.757293168
print(json.dumps({"load": load, "pressure": a / psi, "reading": a * Vp / (Vp + 5e-6) / psi, "wrench": 5.5 * 245 / 275}))
`

describe('one whole job', () => {
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

  it('from the first page to the PDF, its numbers worked out outside the app', async () => {
    const expected: { load: number; pressure: number; reading: number; wrench: number } = JSON.parse(
      (await run('python3', ['-c', outside])).stdout,
    )
    // The demo's own statement for U01 (invented dimensions): 606,739 Pa = 88.0 psi.
    expect(Math.abs(expected.pressure - 606_739 / 6894.757293168)).toBeLessThan(1)
    const { page } = tablet
    await enterDemo(page, server.address)
    await takeIn(page, 'U01', '50 h service, please')
    await keepSnapshot(page, 'P1')
    await chassisSound(page)
    await agreePlan(page)

    await chapterLink(page, 'Set up').click()
    await page.getByText('Start with').waitFor()
    const setUp = await page.getByRole('main').innerText()
    expect(setUp).toMatch(new RegExp(`${Math.round(expected.pressure)}\\s*psi`))
    expect(setUp).toMatch(new RegExp(`load along the leg, F\\s+${Math.round(expected.load)}\\s*N`))
    expect(setUp).toMatch(new RegExp(`P1 put on afterwards will show ${Math.round(expected.reading)}\\s*psi`))
    await page.getByRole('button', { name: 'Write these down' }).click()
    await page.getByText(/Written for the fill/).waitFor()

    await chapterLink(page, 'Work').click()
    const steps = await workThrough(page, ['22 psi', '44 psi', '88 psi'])
    expect(steps).toHaveLength(17)
    const torque = steps.find((step) => step.title.startsWith('Torque the foot fasteners'))
    expect(torque?.text).toMatch(/5\.5\s*N·m/)
    expect(torque?.text).toMatch(new RegExp(`${expected.wrench.toFixed(1).replace('.', '\\.')}\\s*N·m`))

    await page.getByRole('textbox', { name: 'Free length', exact: true }).fill('165')
    await page.getByRole('button', { name: 'Write the free length' }).click()
    await chapterLink(page, 'Set up').click()
    await page.getByRole('button', { name: 'Write down the setting' }).click()
    await page.getByText(/Setting written/).waitFor()
    await page.getByRole('textbox', { name: 'Lowered on, reads', exact: true }).fill('27')
    await page.getByRole('textbox', { name: 'Coming up to rest, reads', exact: true }).fill('33')
    await page.getByRole('button', { name: 'Write the sag' }).click()

    await chapterLink(page, 'Hand over').click()
    const back = page.getByRole('main').locator('[role=checkbox][aria-checked=false]')
    while ((await back.count()) > 0) {
      await back.first().click()
      await page.waitForTimeout(60)
    }
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Mateus Corvalho-Wynd')
    await page.getByRole('textbox', { name: 'Initials', exact: true }).fill('M. C.-W.')
    await page.getByRole('main').getByRole('button', { name: 'Hand over' }).click()
    await page.getByRole('heading', { name: /Handed over/ }).waitFor()

    const href = await page.getByRole('link', { name: 'Hand-over page (PDF)' }).getAttribute('href')
    const answer = await fetch(new URL(href ?? '', server.address))
    expect(answer.headers.get('content-type')).toContain('application/pdf')
    const file = join(await mkdtemp(join(tmpdir(), 'legwork-paper-')), 'page.pdf')
    await writeFile(file, Buffer.from(await answer.arrayBuffer()))
    const text = (await run('pdftotext', ['-layout', file, '-'])).stdout
    expect(text).toContain('Mateus Corvalho-Wynd')
    expect(text).toContain('50 h service, please')
    expect(text).toMatch(new RegExp(`${Math.round(expected.pressure)}\\s*psi`))
    const ics = await page.getByRole('link', { name: /calendar/ }).getAttribute('href')
    expect(await (await fetch(new URL(ics ?? '', server.address))).text()).toContain('BEGIN:VEVENT')
  })
})
