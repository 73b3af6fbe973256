import { readdirSync, readFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { root } from '../prepare/root.mjs'
import { runTool } from './run.mjs'

const asOne = ({ code }) => (code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 })

export async function style() {
  return asOne(await runTool('biome', ['check', '--error-on-warnings', '--max-diagnostics=60', '.']))
}

export async function types() {
  return asOne(await runTool('tsc', ['--pretty', 'false']))
}

/**
 * Types of each room alone, under that room's own settings: an engine file that reaches for `document` or `process`
 * passes the whole-tree check, which knows both.
 */
export async function roomTypes() {
  let failed = 0
  const waiting = settingsOfRooms()
  const takeOneAfterAnother = async () => {
    for (let settings = waiting.pop(); settings; settings = waiting.pop()) {
      const { code } = await runTool('tsc', ['--pretty', 'false', '-p', settings])
      if (code === 0) continue
      process.stdout.write(`${settings}: does not stand by itself\n`)
      failed += 1
    }
  }
  await Promise.all(Array.from({ length: availableParallelism() }, takeOneAfterAnother))
  return asOne({ code: failed })
}

function rooms() {
  return JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).workspaces
}

function settingsOfRooms() {
  return rooms().flatMap((room) =>
    readdirSync(join(root, room))
      .filter((name) => /^tsconfig.*\.json$/.test(name))
      .map((name) => `${room}/${name}`),
  )
}

/** Arrows, rings and undeclared packages. A cruise that sees no module finds no fault either, so every room must be seen. */
export async function layers() {
  const cruise = ['--config', '.dependency-cruiser.cjs', '--output-type', 'json', ...rooms()]
  const { output } = await runTool('depcruise', cruise, { capture: true })
  const { modules, summary } = JSON.parse(output)
  for (const { rule, from, to } of summary.violations) process.stdout.write(`${rule.name}: ${from} → ${to}\n`)
  const unseen = rooms().filter((room) => !modules.some(({ source }) => source.startsWith(`${room}/`)))
  for (const room of unseen) process.stdout.write(`no module was seen in ${room}: the layer check is blind there\n`)
  process.stdout.write(`${modules.length} modules seen, ${summary.violations.length} breaches\n`)
  return asOne({ code: summary.violations.length + unseen.length })
}

export async function unused() {
  return asOne(await runTool('knip', ['--no-progress']))
}
