import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { bundleCommand } from './bundle-command.mjs'
import { bundleWeb } from './bundle-web.mjs'
import { root } from './root.mjs'
import { digestOf } from './sources.mjs'
import { Trouble } from './trouble.mjs'

const below = ['engine', 'trade', 'drawing', 'contract']
const always = ['package-lock.json', 'tsconfig.base.json', 'scripts/prepare']

/** What is built, from what, and by whom. The stamp lies in the folder it vouches for and goes when that goes. */
export const bundles = [
  {
    name: 'the command and the server',
    folder: 'cli/dist',
    proof: 'legwork.js',
    sources: [...always, ...below, 'server', 'cli'],
    make: bundleCommand,
  },
  {
    name: 'the pages',
    folder: 'web/dist',
    proof: 'index.html',
    sources: [...always, ...below, 'web'],
    make: bundleWeb,
  },
]

function stampOf(bundle) {
  return join(root, bundle.folder, '.prepared.json')
}

function isStale(bundle) {
  if (!existsSync(join(root, bundle.folder, bundle.proof))) return true
  try {
    return JSON.parse(readFileSync(stampOf(bundle), 'utf8')).sources !== digestOf(bundle.sources)
  } catch {
    return true
  }
}

export function staleBundles() {
  return bundles.filter(isStale)
}

/** Builds beside the folder and swaps at the end: a failed build leaves the former one whole. */
export async function build(stale) {
  for (const bundle of stale) {
    process.stderr.write(`legwork: building ${bundle.name} …\n`)
    const folder = join(root, bundle.folder)
    const fresh = join(dirname(folder), 'dist.new')
    // Taken before the build: a source saved meanwhile makes the bundle stale again instead of being missed.
    const sources = digestOf(bundle.sources)
    rmSync(fresh, { recursive: true, force: true })
    mkdirSync(fresh, { recursive: true })
    try {
      await bundle.make(fresh)
    } catch (error) {
      rmSync(fresh, { recursive: true, force: true })
      const [what] = error.message.split('\n    at ')
      throw new Trouble(`building ${bundle.name} failed: ${what}`)
    }
    writeFileSync(join(fresh, '.prepared.json'), `${JSON.stringify({ sources })}\n`)
    rmSync(folder, { recursive: true, force: true })
    renameSync(fresh, folder)
  }
}
