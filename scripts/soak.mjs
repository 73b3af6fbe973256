// The press test's tables at full length: prints them and writes docs/soak.md. LEGWORK_PRESS_FORKS changes the count.
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const forks = Number(process.env.LEGWORK_PRESS_FORKS ?? 1000)
if (!Number.isInteger(forks) || forks < 1) {
  process.stderr.write(`LEGWORK_PRESS_FORKS is ${process.env.LEGWORK_PRESS_FORKS}; it must be a whole number from 1.\n`)
  process.exit(2)
}
const git = (...args) => execFileSync('git', args, { encoding: 'utf8' }).trim()
const changed =
  git('status', '--porcelain', '--', 'engine/src', 'engine/acceptance') === '' ? '' : ', with changes not committed'
const folder = mkdtempSync(join(tmpdir(), 'legwork-soak-'))
try {
  const bundle = join(folder, 'soak.mjs')
  await build({
    entryPoints: ['engine/acceptance/soak.ts'],
    outfile: bundle,
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
  })
  const { soak } = await import(pathToFileURL(bundle).href)
  const commit = `${git('rev-parse', '--short', 'HEAD')}${changed}`
  const { lines, missed } = soak(forks, commit, (line) => process.stdout.write(`${line}\n`))
  writeFileSync('docs/soak.md', lines.join('\n'))
  for (const line of missed) process.stderr.write(`missed: ${line}\n`)
  process.exitCode = missed.length === 0 ? 0 : 1
} finally {
  rmSync(folder, { recursive: true })
}
