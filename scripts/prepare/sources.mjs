import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join, relative } from 'node:path'
import { root } from './root.mjs'

const skippedFolders = new Set(['node_modules', 'dist'])

function* filesUnder(path) {
  if (!existsSync(path)) return
  if (!statSync(path).isDirectory()) {
    yield path
    return
  }
  for (const item of readdirSync(path, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
    if (item.isDirectory()) {
      if (!skippedFolders.has(item.name)) yield* filesUnder(join(path, item.name))
    } else if (!/\.test\.tsx?$/.test(item.name)) yield join(path, item.name)
  }
}

/** One digest over names and contents. Contents and not times, so that going back and forth in git rebuilds nothing. */
export function digestOf(paths) {
  const hash = createHash('sha256')
  for (const path of paths) {
    for (const file of filesUnder(join(root, path))) {
      hash.update(relative(root, file)).update('\0').update(readFileSync(file)).update('\0')
    }
  }
  return hash.digest('hex')
}
