/** A tablet: Debian's Chromium with its own profile on disk, so that it can be killed and started again. */
import { readdir, readFile } from 'node:fs/promises'
import { type BrowserContext, chromium, type Page } from 'playwright-core'

export interface Tablet {
  context: BrowserContext
  page: Page
  /** SIGKILL for the browser and all its processes. */
  kill: () => Promise<void>
  close: () => Promise<void>
}

export const sizes = {
  tablet: { width: 1024, height: 768 },
  portrait: { width: 768, height: 1024 },
  phone: { width: 390, height: 844 },
  desktop: { width: 1440, height: 900 },
} as const

async function processesWith(word: string): Promise<number[]> {
  const found: number[] = []
  for (const name of await readdir('/proc')) {
    if (!/^\d+$/.test(name)) continue
    const line = await readFile(`/proc/${name}/cmdline`, 'utf8').catch(() => '')
    if (line.includes(word) && Number(name) !== process.pid) found.push(Number(name))
  }
  return found
}

/** Starts Chromium on a profile folder; a folder used before brings its storage back. */
export async function openTablet(
  profile: string,
  options: { size?: keyof typeof sizes; theme?: 'light' | 'dark' } = {},
): Promise<Tablet> {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: '/usr/bin/chromium',
    headless: true,
    viewport: sizes[options.size ?? 'tablet'],
    colorScheme: options.theme ?? 'light',
    hasTouch: true,
    locale: 'en-GB',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
  context.setDefaultTimeout(15_000)
  const page = context.pages()[0] ?? (await context.newPage())
  return {
    context,
    page,
    async kill() {
      for (const pid of await processesWith(profile)) {
        try {
          process.kill(pid, 'SIGKILL')
        } catch {
          // It ended by itself when its parent was killed.
        }
      }
      await context.close().catch(() => undefined)
    },
    close: () => context.close(),
  }
}
