/** How a reading is told by what it is of, beyond what its measure says. */

/** In hundredths of a millimetre. */
const fine: ReadonlySet<string> = new Set([
  'clearance',
  'mount-play',
  'inspect',
  'air-shaft-run-out',
  'wiper-outside-diameter',
])
/** A ratio in per cent. */
const share: ReadonlySet<string> = new Set(['leak-10-min', 'leak-24-h'])

export interface ReadAs {
  fine: boolean
  share: boolean
}

/** @param what  what was measured, or the step that it was read at */
export const readAs = (what: string): ReadAs => ({ fine: fine.has(what), share: share.has(what) })
