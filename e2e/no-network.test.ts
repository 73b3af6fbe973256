/** A tablet without a network, killed with its unsent lines; a server killed while they are delivered. */
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { EntriesAnswer } from '@legwork/contract'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type ServerProcess, serverProcess } from './src/server-process.ts'
import { openTablet, type Tablet } from './src/tablet.ts'
import { enterDemo } from './src/walk.ts'

const lines = 30
const noteOf = (n: number): string => `line ${String(n).padStart(2, '0')}`

const profile = (): Promise<string> => mkdtemp(join(tmpdir(), 'legwork-profile-'))

/** The notes of the open book page that carry one of our lines, newest first, with how they stand. */
async function notesShown(page: Page): Promise<{ text: string; kept: boolean }[]> {
  const rows = page.getByRole('list', { name: 'Book of this job' }).getByRole('listitem')
  const texts = await rows.allInnerTexts()
  return texts
    .flatMap((text) => {
      const found = /line \d\d/.exec(text)
      return found ? [{ text: found[0], kept: text.includes('kept here') }] : []
    })
    .reverse()
}

describe('no network', () => {
  let server: ServerProcess
  let tablet: Tablet
  let second: Tablet
  let own: string
  beforeAll(async () => {
    server = await serverProcess({ now: '2026-06-03T10:00:00Z' })
    await server.start()
    own = await profile()
    tablet = await openTablet(own)
    second = await openTablet(await profile())
  })
  afterAll(async () => {
    await tablet?.close()
    await second?.close()
    await server?.kill()
  })

  it('keeps 30 lines through a killed browser and a server killed during delivery; each is in the book once, in order', async () => {
    await enterDemo(tablet.page, server.address)
    await enterDemo(second.page, server.address)
    const href = await tablet.page.getByRole('link', { name: /U09/ }).first().getAttribute('href')
    const book = `${server.address}${href}/book`
    await second.page.goto(book)
    await tablet.page.goto(book)
    // The worker has the pages before the network goes.
    await tablet.page.evaluate(async () => {
      await navigator.serviceWorker.ready
    })
    await tablet.page.reload()
    await tablet.page.getByRole('heading', { name: 'Book of this job' }).waitFor()

    await server.kill()
    for (let n = 1; n <= lines; n++) {
      await tablet.page.getByRole('textbox', { name: 'Note' }).fill(noteOf(n))
      await tablet.page.getByRole('button', { name: 'Write the note' }).click()
      await expect.poll(async () => (await notesShown(tablet.page)).length).toBe(n)
    }
    await tablet.kill()

    tablet = await openTablet(own)
    await tablet.page.goto(book)
    await tablet.page.getByRole('heading', { name: 'Book of this job' }).waitFor()
    const expected = Array.from({ length: lines }, (_, i) => noteOf(i + 1))
    const afterKill = await notesShown(tablet.page)
    expect(afterKill.map((note) => note.text)).toEqual(expected)
    expect(afterKill.every((note) => note.kept)).toBe(true)

    // The server comes back and is killed again, each time a little later: before, while and after lines arrive.
    for (const pause of [0, 60, 150, 300]) {
      await server.start()
      await new Promise((go) => setTimeout(go, pause))
      await server.kill()
    }
    await server.start()
    await expect
      .poll(async () => (await notesShown(tablet.page)).filter((note) => !note.kept).length, { timeout: 90_000 })
      .toBe(lines)
    await expect
      .poll(async () => (await notesShown(second.page)).map((note) => note.text), { timeout: 60_000 })
      .toEqual(expected)

    const { workshops } = (await (await fetch(`${server.address}/api/workshops`)).json()) as {
      workshops: { id: string }[]
    } // as its schema says
    const stream = decodeURIComponent(href?.split('/').at(-1) ?? '')
    const answer = await fetch(`${server.address}/api/workshops/${workshops[0]?.id}/streams/${stream}/entries?after=0`)
    const { entries, texts } = (await answer.json()) as EntriesAnswer // as its schema says
    const words = new Map(texts.map((text) => [text.digest, text.text]))
    const inBook = entries
      .filter((entry) => entry.kind === 'noted')
      .map((entry) => words.get(entry.body.text))
      .filter((text) => text?.startsWith('line '))
    expect(inBook).toEqual(expected)
    expect(new Set(entries.map((entry) => entry.id)).size).toBe(entries.length)
  })
})
