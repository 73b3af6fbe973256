/** The sheet that a new unit begins with: what was measured, and nothing that only the maker can say. */
import {
  emptyLeg,
  genericSheet,
  genericSizesFor,
  type Id,
  type Leg,
  type LegRole,
  type LegSheet,
  type Sheet,
  type Source,
  type SourcedNumber,
} from '@legwork/trade'
import { isFork, type NewUnit } from './take-in-draft.ts'

/** Another stanchion is another fork; a travel may be off by its own measuring [m]. */
const alike = { stanchion: 0.0006, stroke: 0.002 } as const

/** Sheets of the register that the unit's own code and year have to agree with: of its kind and size, the newest revision. */
export function sheetsLike(made: NewUnit, sheets: readonly Sheet[]): readonly Sheet[] {
  const newest = new Map(sheets.map((sheet) => [sheet.id, sheet]))
  const near = (of: SourcedNumber | null, to: number | null, within: number): boolean =>
    of === null || to === null || Math.abs(of.value - to) <= within
  return [...newest.values()].filter(
    (sheet) =>
      sheet.kind === made.kind &&
      sheet.body === made.body &&
      near(sheet.stanchion, made.stanchion, alike.stanchion) &&
      near(sheet.stroke, made.stroke, alike.stroke),
  )
}

export const genericFor = (made: NewUnit) => genericSizesFor(made).slice(0, 3)

const rolesOf = (made: NewUnit): Record<Leg, LegRole> => ({
  left: made.springLeg === 'left' ? 'spring' : 'damper',
  right: made.springLeg === 'right' ? 'spring' : 'damper',
})

function legsOf(made: NewUnit): Sheet['legs'] {
  if (!isFork(made.kind)) return null
  const roles = rolesOf(made)
  const leg = (side: Leg): LegSheet => ({ ...emptyLeg(roles[side]), fixing: made.fixing[side] })
  return { left: leg('left'), right: leg('right') }
}

/**
 * A sheet for a new unit.
 *
 * @param measured  who measured it, and when
 * @returns null for a unit whose sheet is in the register already, or whose travel was not measured
 */
export function sheetForNewUnit(made: NewUnit, id: Id, measured: Source): Sheet | null {
  if (made.sheetWay === 'here' || made.stroke === null) return null
  const sourced = (value: number): SourcedNumber => ({ value, source: measured })
  const stroke = sourced(made.stroke)
  const stanchion = made.stanchion === null ? null : sourced(made.stanchion)
  const legs = legsOf(made)
  if (made.sheetWay === 'generic') {
    const size = genericFor(made).find(({ key }) => key === made.sheetChosen)
    if (!size) return null
    const roles = legs ? rolesOf(made) : null
    return { ...genericSheet(size, { id, stroke, stanchion, damper: made.damper, roles }), legs, body: made.body }
  }
  return {
    id,
    name: made.sheetName.trim(),
    revision: made.sheetRevision.trim(),
    generic: false,
    kind: made.kind,
    body: made.body,
    damper: made.damper,
    stanchion: isFork(made.kind) ? stanchion : null,
    stroke,
    spring: {},
    springKind: made.kind.endsWith('coil') ? 'coil' : 'air',
    spacers: null,
    lowerVolume: null,
    maxPressure: null,
    freeLength: null,
    bushings: null,
    // Both knobs are looked for: one that is not there is entered as not known, because there is none.
    clicks: { rebound: null, compression: null },
    legs,
    limits: {},
  }
}
