/** Pictures of every page of the demo workshop into docs/screens: `npm run screens`. */
import { mkdir, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { addressesOf, chapters } from './addresses.ts'
import { serverProcess } from './server-process.ts'
import { openTablet, sizes } from './tablet.ts'
import { enterDemo } from './walk.ts'

const folder = join(process.cwd(), 'docs/screens')
/** Every page at every size by day and on a tablet by night; the chapters of a job at every size by night too. */
const views = [
  ['tablet', 'light'],
  ['tablet', 'dark'],
  ['portrait', 'light'],
  ['portrait', 'dark'],
  ['phone', 'light'],
  ['phone', 'dark'],
  ['desktop', 'light'],
  ['desktop', 'dark'],
] as const

const server = await serverProcess({ now: '2026-06-03T10:00:00Z' })
await server.start()
await rm(folder, { recursive: true, force: true })
await mkdir(folder, { recursive: true })
try {
  for (const [size, theme] of views) {
    const tablet = await openTablet(await mkdtemp(join(tmpdir(), 'legwork-profile-')), { size, theme })
    const { page } = tablet
    const { width, height } = sizes[size]
    const picture = async (name: string): Promise<void> => {
      await page.waitForTimeout(300)
      await page.screenshot({ path: join(folder, `${name}-${theme}-${width}x${height}.png`) })
    }
    await page.goto(server.address)
    await page.getByRole('button', { name: 'Look around the demo workshop' }).waitFor()
    const everyPage = theme === 'light' || size === 'tablet'
    if (everyPage) await picture('start')
    await enterDemo(page, server.address)
    for (const [name, address] of await addressesOf(page, server.address)) {
      if (!everyPage && !chapters.some((chapter) => chapter === name)) continue
      await page.goto(address)
      await page.getByRole('main').first().waitFor()
      await picture(name)
    }
    await tablet.close()
  }
} finally {
  await server.kill()
}
