/** A server of its own and a tablet before it, for as long as the tests of a file run. */
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import { type ServerProcess, serverProcess } from './server-process.ts'
import { openTablet, type Tablet } from './tablet.ts'

/** The demo's calendar is counted back from this moment, so that every test sees the same days. */
const now = '2026-06-03T10:00:00Z'

export interface Bench {
  /** Where the server answers. */
  readonly address: string
  readonly page: Page
}

type BenchOptions = Parameters<typeof openTablet>[1] & {
  /** Puts the page's clocks into the test's hand: it goes on by itself, and forward where the test says so. */
  clock?: boolean
}

/**
 * Call it inside `describe`: the server starts on an empty folder and the tablet on an empty profile before the first
 * test, and both are ended after the last.
 */
export function useBench({ clock = false, ...options }: BenchOptions = {}): Bench {
  let server: ServerProcess | null = null
  let tablet: Tablet | null = null
  beforeAll(async () => {
    server = await serverProcess({ now })
    await server.start()
    tablet = await openTablet(await mkdtemp(join(tmpdir(), 'legwork-profile-')), options)
    if (clock) await tablet.page.clock.install()
  })
  afterAll(async () => {
    await tablet?.close()
    await server?.kill()
  })
  return {
    get address() {
      if (!server) throw new Error('the server starts before the first test, not before that')
      return server.address
    },
    get page() {
      if (!tablet) throw new Error('the tablet opens before the first test, not before that')
      return tablet.page
    },
  }
}
