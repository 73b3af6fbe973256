/** One server a data folder: an exclusive lock that the system lets go of however the process ends. */
import { join } from 'node:path'
import { FolderInUse } from './start-refused.ts'
import { openSqliteFile } from './store/sqlite/sqlite-file.ts'

/** @returns how to let go @throws FolderInUse when another server has the folder */
export function lockFolder(folder: string): () => void {
  const file = openSqliteFile(join(folder, 'in-use.sqlite'))
  try {
    // Whoever has it has it for as long as it runs: waiting would not help.
    file.exec('PRAGMA busy_timeout = 0')
    file.exec('PRAGMA locking_mode = EXCLUSIVE')
    file.exec('BEGIN EXCLUSIVE')
  } catch {
    file.close()
    throw new FolderInUse(`Another Legwork server has ${folder} open; use that one, or stop it first.`)
  }
  return () => file.close()
}
