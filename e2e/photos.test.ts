/** A photo as it came in: taken with no network, made plain, kept through a killed browser, sent once, seen on another screen. */
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type EntriesAnswer, jpegMarkers } from '@legwork/contract'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fingerOn } from './src/hand.ts'
import { type ServerProcess, serverProcess } from './src/server-process.ts'
import { openTablet, type Tablet } from './src/tablet.ts'
import { chapterLink, enterDemo, takeIn } from './src/walk.ts'

const profile = (): Promise<string> => mkdtemp(join(tmpdir(), 'legwork-profile-'))

/** A picture of 3,000 × 2,000 as the browser itself encodes it. */
async function picture(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(async () => {
    const canvas = document.createElement('canvas')
    canvas.width = 3000
    canvas.height = 2000
    const context = canvas.getContext('2d')
    if (!context) throw new Error('no canvas')
    for (let n = 0; n < 60; n++) {
      context.fillStyle = `hsl(${n * 6} 60% 50%)`
      context.fillRect((n % 10) * 300, Math.floor(n / 10) * 340, 300, 340)
    }
    return canvas.toDataURL('image/jpeg', 0.9).split(',')[1] ?? ''
  })
  return Buffer.from(base64, 'base64')
}

/**
 * The same with a camera's EXIF before it: one GPS directory that says 60° N, and a maker's text.
 * Written by hand after EXIF 2.32 (CIPA DC-008): 4.5.4 APP1, 4.6.2 IFD entries, 4.6.3 GPS pointer 0x8825, 4.6.6 GPS tags 1, 2.
 */
function withPlace(jpeg: Buffer): Buffer {
  const word = (n: number) => [n >> 8, n & 255]
  const long = (n: number) => [0, 0, ...word(n)]
  const tiff = [
    ...[0x4d, 0x4d, 0, 42, ...long(8)],
    ...[...word(2), ...word(0x010f), ...word(2), ...long(8), ...long(38)],
    ...[...word(0x8825), ...word(4), ...long(1), ...long(46), ...long(0)],
    ...Buffer.from('CAMERA-A', 'latin1'),
    ...[...word(2), ...word(1), ...word(2), ...long(2), 0x4e, 0, 0, 0],
    ...[...word(2), ...word(5), ...long(3), ...long(76), ...long(0)],
    ...[60, 1, 10, 1, 11, 1].flatMap(long),
  ]
  const content = [...Buffer.from('Exif\0\0', 'latin1'), ...tiff]
  return Buffer.concat([
    jpeg.subarray(0, 2),
    Buffer.from([0xff, 0xe1, ...word(content.length + 2), ...content]),
    jpeg.subarray(2),
  ])
}

describe('photos', () => {
  let server: ServerProcess
  let tablet: Tablet
  let own: string
  beforeAll(async () => {
    server = await serverProcess({ now: '2026-06-03T10:00:00Z' })
    await server.start()
    own = await profile()
    tablet = await openTablet(own)
  })
  afterAll(async () => {
    await tablet?.close()
    await server?.kill()
  })

  it('is taken offline, survives a killed browser, is sent once without place and camera, and is removed with the rider', async () => {
    let { page } = tablet
    await enterDemo(page, server.address)
    await takeIn(fingerOn(page), 'U01', 'scratch on the left leg')
    const address = page.url()
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready
    })
    const taken = withPlace(await picture(page))
    expect(jpegMarkers(taken)).toMatchObject({ width: 3000, telling: ['APP1'] })
    for (const [field, value] of [
      ['Length at rest', '164'],
      ['Where the ring stands', '138'],
    ] as const) {
      await page.getByRole('textbox', { name: field }).fill(value)
      await page.getByRole('button', { name: 'Keep', exact: true }).click()
    }
    const camera = page.getByLabel('Take a photo')
    // Both lines are kept before the page is loaded again, and the page is there before the network goes.
    await camera.waitFor({ state: 'attached' })
    await page.reload()
    await camera.waitFor({ state: 'attached' })
    await server.kill()

    const file = { name: 'scratch.jpg', mimeType: 'image/jpeg', buffer: taken }
    await camera.setInputFiles(file)
    await page.getByRole('button', { name: 'Photo 1 of 1, large' }).waitFor()
    // Not written down yet, and there all the same when the browser is killed.
    await tablet.kill()
    tablet = await openTablet(own)
    page = tablet.page
    await page.goto(address)
    await page.getByRole('button', { name: 'Keep 1 photo' }).click()
    await page.getByText('on this tablet').waitFor()
    await page.getByRole('button', { name: 'Photo 1 of 1, large' }).click()
    const large = page.getByRole('dialog').getByRole('img')
    await large.waitFor()
    // 2,000 px along the long edge, the other in proportion: 2,000 × 2,000 / 3,000
    expect(
      await large.evaluate((img) => (img instanceof HTMLImageElement ? [img.naturalWidth, img.naturalHeight] : [])),
    ).toEqual([2000, 1333])
    await page.getByRole('button', { name: 'Close' }).click()

    await server.start()
    await page.getByText('in the shop’s book').waitFor({ timeout: 60_000 })
    const { workshops } = (await (await fetch(`${server.address}/api/workshops`)).json()) as {
      workshops: { id: string }[]
    } // as its schema says
    const stream = `job:${/jobs\/([^/]+)/.exec(address)?.[1] ?? ''}`
    const shop = `${server.address}/api/workshops/${workshops[0]?.id}`
    const { entries } = (await (await fetch(`${shop}/streams/${stream}/entries?after=0`)).json()) as EntriesAnswer // as its schema says
    const named = entries.flatMap((entry) => (entry.kind === 'snapshot-kept' ? entry.body.photos : []))
    expect(named).toHaveLength(1)
    const [digest = ''] = named
    const stored = Buffer.from(await (await fetch(`${shop}/photos/${digest}`)).arrayBuffer())
    expect(createHash('sha256').update(stored).digest('hex')).toBe(digest)
    expect(jpegMarkers(stored)).toEqual({ width: 2000, height: 1333, telling: [], trailing: false })
    for (const trace of ['Exif', 'CAMERA-A']) expect(stored.includes(trace)).toBe(false)

    // Another station sees it, and after the rider is erased nobody does.
    const second = await openTablet(await profile())
    await enterDemo(second.page, server.address)
    await second.page.goto(address)
    await second.page.getByRole('button', { name: 'Photo 1 of 1, large' }).getByRole('img').waitFor()
    const opened = entries.find((entry) => entry.kind === 'job-opened')
    const by = { person: opened?.person, station: opened?.station }
    const erased = await fetch(`${shop}/riders/${opened?.body.rider}/erase`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(by),
    })
    expect(await erased.json()).toMatchObject({ photos: 1 })
    for (const one of [second.page, page]) {
      await one.reload()
      await one
        .getByText(/^removed on/)
        .first()
        .waitFor()
    }
    await second.close()
  })

  it('of a condemned part stands on its notice; one with a note stands in the book', async () => {
    const { page } = tablet
    await page.goto(server.address)
    await takeIn(fingerOn(page), 'U02', 'creaks under the brake')
    await chapterLink(page, 'Look over').click()
    await page.getByRole('button', { name: 'Note, photo or condemn' }).click()
    const condemn = page.getByRole('button', { name: 'Condemn the crown' })
    // Another picture than the one that was removed for good.
    const shot = (width: number, height: number) =>
      page.screenshot({ type: 'jpeg', clip: { x: 0, y: 0, width, height } })
    const file = { name: 'crown.jpg', mimeType: 'image/jpeg', buffer: await shot(800, 600) }
    await page.getByLabel('Take a photo').setInputFiles(file)
    await page.getByRole('button', { name: 'Photo 1 of 1, large' }).waitFor()
    // A picture alone does not say why.
    await condemn.click()
    await page.getByText('Say in a few words what was seen.').waitFor()
    await page.getByRole('textbox', { name: 'What was found' }).fill('the marker line shifts')
    await condemn.click()
    await page.getByRole('heading', { name: 'Stopped' }).first().waitFor()
    const part = page.getByRole('listitem').filter({ hasText: 'the marker line shifts' })
    await part.getByText('in the shop’s book').waitFor({ timeout: 60_000 })
    const href = (await page.getByRole('link', { name: /notice/i }).getAttribute('href')) ?? ''
    const notice = Buffer.from(await (await fetch(`${server.address}${href}`)).arrayBuffer())
    // Read by poppler, a program outside the project.
    const images = execFileSync('pdfimages', ['-list', '-'], { input: notice }).toString().trim().split('\n').slice(2)
    expect(images).toEqual([expect.stringMatching(/image\s+800\s+600 /)])
    expect(execFileSync('pdftotext', ['-', '-'], { input: notice }).toString()).toContain('the marker line shifts')

    await page
      .getByRole('banner')
      .getByRole('link', { name: /sent|kept/ })
      .click()
    await page.getByRole('textbox', { name: 'Note', exact: true }).fill('rider told by telephone')
    await page.getByRole('button', { name: 'With a photo' }).click()
    // The very same picture is the part's already.
    await page.getByLabel('Choose a picture').setInputFiles(file)
    await page.getByText('That picture is in the book already.').waitFor()
    await page.getByLabel('Choose a picture').setInputFiles({
      name: 'tray.jpg',
      mimeType: 'image/jpeg',
      buffer: await shot(320, 240),
    })
    await page.getByRole('button', { name: 'Photo 1 of 1, large' }).first().waitFor()
    await page.getByRole('button', { name: 'Write the note' }).click()
    const line = page.getByRole('listitem').filter({ hasText: 'rider told by telephone' })
    await line.getByRole('img').waitFor()
    await line.getByText('in the shop’s book').waitFor({ timeout: 60_000 })
  })
})
