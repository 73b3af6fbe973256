// Takes the pictures of docs/screens: bundles the picture taker and runs it.
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const outfile = join(process.cwd(), 'e2e/dist/screens.mjs')
await build({
  entryPoints: ['e2e/src/screens.ts'],
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  // The bundle lies one folder beside the sources, so what they look for from there is found from here.
  logLevel: 'error',
})
await import(pathToFileURL(outfile).href)
rmSync(outfile)
