// Takes the figures of docs/benchmarks.md: bundles the timed questions for Node and for a page, and runs them.
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const folder = join(process.cwd(), 'benchmarks/dist')
const forNode = join(folder, 'bench.mjs')
const forPage = join(folder, 'engine-bench.js')
await build({
  entryPoints: ['benchmarks/src/main.ts'],
  outfile: forNode,
  bundle: true,
  platform: 'node',
  format: 'esm',
  external: ['playwright-core'],
  logLevel: 'error',
})
await build({
  entryPoints: ['benchmarks/src/engine-timings.ts'],
  outfile: forPage,
  bundle: true,
  platform: 'browser',
  format: 'iife',
  globalName: 'engineBench',
  logLevel: 'error',
})
const { bench } = await import(pathToFileURL(forNode).href)
await bench(forPage)
rmSync(folder, { recursive: true })
