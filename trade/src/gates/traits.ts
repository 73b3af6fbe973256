/** What of a unit's kind the gates ask about: parts to look at, what is kept as it came in, what goes back. */
import { chassisParts } from '../journal/entry.ts'
import type { Sheet, UnitKind } from '../sheets/sheet.ts'
import type { Traits } from './asked.ts'
import { putBackItems, snapshotItems } from './facts.ts'

/** The traits of a unit by its sheet; with no sheet, everything that its kind could have is asked for. */
export function traitsOf(kind: UnitKind, sheet: Sheet | null): Traits {
  const fork = kind === 'fork-air' || kind === 'fork-coil'
  const spring = kind === 'fork-air' || kind === 'shock-air' ? 'air' : 'coil'
  // A sheet that says of neither knob how many clicks it has is silent, not a sheet of a unit without knobs: both are looked for.
  const silent = !sheet || (sheet.clicks.rebound === null && sheet.clicks.compression === null)
  const compression = silent || sheet.clicks.compression !== null
  const rebound = silent || sheet.clicks.rebound !== null
  return {
    spring,
    parts: fork ? chassisParts : [],
    snapshot: snapshotItems.filter(
      (item) =>
        (item !== 'pressure' || spring === 'air') &&
        (item !== 'compression' || compression) &&
        (item !== 'rebound' || rebound),
    ),
    putBack: fork ? putBackItems : [],
    compression,
  }
}
