/** The folder the book lies in: made for this person alone, and writable. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { StartRefused } from './start-refused.ts'

/** @throws StartRefused when the folder cannot be made or written to */
export function openDataFolder(folder: string): void {
  const probe = join(folder, '.may-write')
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    writeFileSync(probe, '')
    rmSync(probe)
  } catch (trouble) {
    const why = trouble instanceof Error && 'code' in trouble ? String(trouble.code) : String(trouble)
    throw new StartRefused(`The data folder ${folder} cannot be written to (${why}); set LEGWORK_DATA to one that can.`)
  }
}
