/** Versions of a sheet's file, and how a file of an older one is lifted to the newest before it is read. */
import type { Loose } from './file-sources.ts'
import { sheetFileVersion } from './sheet-file.ts'

/** Lifts what a file holds from `from` to `from + 1`. */
export interface FileCaster {
  from: number
  lift: (file: Loose) => Loose
}

/** Append-only: every file that was ever exported is read. */
const fileCasters: readonly FileCaster[] = []

/**
 * A file as the newest version has it; null where the version is none that this program reads.
 *
 * @example liftSheetFile(1, { version: 1 }) // { version: 1 }
 */
export function liftSheetFile(
  version: unknown,
  file: Loose,
  casters: readonly FileCaster[] = fileCasters,
  newest: number = sheetFileVersion,
): Loose | null {
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > newest) return null
  let lifted = file
  for (let at = version; at < newest; at += 1) {
    const caster = casters.find((one) => one.from === at)
    if (!caster) return null
    lifted = caster.lift(lifted)
  }
  return lifted
}
