/** A browser walks one whole job by role and label, from the first page to the PDF. */
import { execFile } from 'node:child_process'
import { mkdtemp, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import type { EntriesAnswer } from '@legwork/contract'
import { describe, expect, it } from 'vitest'
import { useBench } from './src/bench.ts'
import { fingerOn } from './src/hand.ts'
import {
  agreePlan,
  chapterLink,
  chassisSound,
  enterDemo,
  handOver,
  keepSnapshot,
  proveLeak,
  proveLength,
  takeIn,
  workThrough,
  writeSetting,
  writeStartPressure,
} from './src/walk.ts'

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

async function entriesOf(address: string): Promise<readonly EntriesAnswer['entries'][number][]> {
  const { workshops } = await (await fetch(`${address}/api/workshops`)).json()
  const answer = await fetch(`${address}/api/workshops/${workshops[0].id}/entries?limit=2000`)
  const { entries }: EntriesAnswer = await answer.json()
  return entries
}

describe('one whole job', () => {
  const bench = useBench({ clock: true })

  it('from the first page to the PDF, its numbers worked out outside the app', async () => {
    const expected: { load: number; pressure: number; reading: number; wrench: number } = JSON.parse(
      (await run('python3', ['-c', outside])).stdout,
    )
    // The demo's own statement for U01 (invented dimensions): 606,739 Pa = 88.0 psi.
    expect(Math.abs(expected.pressure - 606_739 / 6894.757293168)).toBeLessThan(1)
    const { page, address } = bench
    const hand = fingerOn(page)
    await enterDemo(page, address)
    await takeIn(hand, 'U01', '50 h service, please')
    await keepSnapshot(hand, 'P1')
    await chassisSound(hand)
    await agreePlan(hand)

    const setUp = await writeStartPressure(hand)
    expect(setUp).toMatch(new RegExp(`${Math.round(expected.pressure)}\\s*psi`))
    expect(setUp).toMatch(new RegExp(`load along the leg, F\\s+${Math.round(expected.load)}\\s*N`))
    expect(setUp).toMatch(new RegExp(`P1 put on afterwards will show\\s+${Math.round(expected.reading)}\\s*psi`))

    await chapterLink(page, 'Work').click()
    const steps = await workThrough(hand, ['22 psi', '44 psi', '88 psi'])
    expect(steps).toHaveLength(17)
    const torque = steps.find((step) => step.title.startsWith('Torque the foot fasteners'))
    expect(torque?.text).toMatch(/5\.5\s*N·m/)
    expect(torque?.text).toMatch(new RegExp(`${expected.wrench.toFixed(1).replace('.', '\\.')}\\s*N·m`))

    expect(steps.find(({ title }) => title.startsWith('Oil in'))?.after).toContain('batch 7')

    await proveLength(hand, '165')
    await writeSetting(hand, ['27', '33'])
    const shows = Math.round(expected.reading)
    expect(await proveLeak(hand, ['88psi', `${shows}psi`])).toMatch(new RegExp(`${shows}\\s*psi`))
    await handOver(hand, 'Mateus Corvalho-Wynd', 'M. C.-W.')

    const href = await page.getByRole('link', { name: 'Hand-over page (PDF)' }).getAttribute('href')
    const answer = await fetch(new URL(href ?? '', address))
    expect(answer.headers.get('content-type')).toContain('application/pdf')
    const file = join(await mkdtemp(join(tmpdir(), 'legwork-paper-')), 'page.pdf')
    await writeFile(file, Buffer.from(await answer.arrayBuffer()))
    const text = (await run('pdftotext', ['-layout', file, '-'])).stdout
    expect(text).toContain('Mateus Corvalho-Wynd')
    expect(text).toContain('50 h service, please')
    expect(text).toMatch(new RegExp(`${Math.round(expected.pressure)}\\s*psi`))
    // Each reading is in the book with the instrument it was taken with and, off a pump, how.
    const inBook = await entriesOf(address)
    const step = (name: string) =>
      inBook.flatMap((one) => (one.kind === 'step-done' && one.body.step === name ? [one.body.reading] : [])).slice(-2)
    for (const reading of step('foot-off'))
      expect(reading).toMatchObject({ measure: 'm³', instrument: expect.any(String) })
    expect(step('fill-target').at(-1)).toMatchObject({ instrument: expect.any(String), how: 'pumped' })
    const length = inBook.findLast((one) => one.kind === 'measured' && one.body.what === 'free-length')
    expect(length?.body).toMatchObject({ reading: { instrument: expect.any(String) } })

    const ics = await page.getByRole('link', { name: /calendar/ }).getAttribute('href')
    expect(await (await fetch(new URL(ics ?? '', address))).text()).toContain('BEGIN:VEVENT')
  })
})
