/** The same book adds up to the same state in the server's build and in the pages' build of the reduction. */
import { createHash } from 'node:crypto'
import { fileURLToPath } from 'node:url'
import { runInNewContext, runInThisContext } from 'node:vm'
import type { AnyBookEntry, JobState } from '@legwork/trade'
import { build as bundleForNode } from 'esbuild'
import { build as bundleForPages, loadConfigFromFile } from 'vite'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type ModelShop, openModelShop } from './job-shop.ts'
import { type PlainContext, replayed } from './replayed.ts'
import { loadedStation } from './station.ts'
import { storyOf } from './story.ts'
import { ToldJob } from './told-job.ts'

type Replayed = typeof replayed

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))
const entry = here('replayed.ts')
const runs = Math.min(500, Number(process.env.LEGWORK_MODEL_RUNS ?? 30))
/** Not the stories of the other test. */
const firstSeed = 1_000_000

/** As the command and the server are bundled: `scripts/prepare/bundle-command.mjs`. */
async function serverBuild(): Promise<Replayed> {
  const settings = { bundle: true, format: 'iife', globalName: 'book', platform: 'node', target: 'node20.19' } as const
  const { outputFiles } = await bundleForNode({ entryPoints: [entry], write: false, logLevel: 'silent', ...settings })
  return runInThisContext(`${outputFiles[0]?.text}\nbook.replayed`)
}

/** As the pages are bundled, squeezed and for their browsers; run where there is nothing but the language. */
async function pagesBuild(): Promise<Replayed> {
  const found = await loadConfigFromFile({ command: 'build', mode: 'production' }, here('../../../web/vite.config.ts'))
  const target = found?.config.build?.target
  if (!target) throw new Error('web/vite.config.ts names no target')
  const lib = { entry, formats: ['iife' as const], name: 'book', fileName: 'book' }
  const built = await bundleForPages({ configFile: false, logLevel: 'error', build: { write: false, target, lib } })
  const [bundle] = [built].flat()
  const chunk = bundle && 'output' in bundle ? bundle.output[0] : null
  if (chunk?.type !== 'chunk') throw new Error('the bundler gave no chunk')
  // Squeezed as the pages are: the names are gone.
  expect(chunk.code).not.toContain('reduceJob')
  return runInNewContext(`${chunk.code}\nbook.replayed`, {})
}

let model: ModelShop
beforeAll(async () => {
  model = await openModelShop()
})
afterAll(() => model.shop.close())

const digest = (text: string): string => createHash('sha256').update(text).digest('hex')

it(`the same state in both builds, for the books of ${runs} stories and the first half of each`, async () => {
  const builds = { server: await serverBuild(), pages: await pagesBuild() }
  const ids = [await model.shop.station(), await model.shop.station()] as const
  const numbers = [0, 0]
  const states = new Set<JobState['state']>()
  for (let seed = firstSeed; seed < firstSeed + runs; seed++) {
    const [first, second] = [loadedStation(model, ids[0], numbers[0]), loadedStation(model, ids[1], numbers[1])]
    const story = storyOf(seed)
    const job = await ToldJob.tell(model, story, [first, second], () => undefined)
    numbers.splice(0, 2, first.no, second.no)
    const { context, sheet } = model.of(story.unit)
    if (!context.unit) throw new Error('the model has units')
    const roles = {
      [model.people.owner]: 'owner',
      [model.people.technician]: 'technician',
      [model.people.junior]: 'junior',
    } as const
    const plain: PlainContext = { unit: context.unit, sheet, roles, now: model.shop.now.toISOString() }
    states.add(job.state().state)
    const books: readonly (readonly AnyBookEntry[])[] = [job.book, job.book.slice(0, job.book.length >> 1)]
    for (const book of books) {
      const sent = [JSON.stringify(book), JSON.stringify(plain)] as const
      const wanted = digest(replayed(...sent))
      expect(digest(builds.server(...sent)), `seed ${seed}, server`).toBe(wanted)
      expect(digest(builds.pages(...sent)), `seed ${seed}, pages`).toBe(wanted)
    }
  }
  expect(states.size).toBeGreaterThan(1)
}, 600_000)
