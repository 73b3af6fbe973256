/** The folder the book lies in: made for this person alone, and writable. */
import { existsSync, mkdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { StartRefused } from './start-refused.ts'

/** Level by level: where a level cannot be made, Node's own way down tries the same one for ever (seen under `/proc`). */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return
  makeFolder(dirname(folder))
  try {
    mkdirSync(folder, { mode: 0o700 })
  } catch (trouble) {
    // Another server that starts at the same moment may have made it.
    if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) throw trouble
  }
}

/** @throws StartRefused when the folder cannot be made or written to */
export function openDataFolder(folder: string): void {
  const probe = join(folder, '.may-write')
  try {
    makeFolder(resolve(folder))
    writeFileSync(probe, '')
    rmSync(probe)
  } catch (trouble) {
    const why = trouble instanceof Error && 'code' in trouble ? String(trouble.code) : String(trouble)
    throw new StartRefused(`The data folder ${folder} cannot be written to (${why}); set LEGWORK_DATA to one that can.`)
  }
}
