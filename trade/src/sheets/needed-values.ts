/** The values that a plan can't do without: from the maker's sheet or measured here, never from common practice. */
import { legs } from '../journal/entry.ts'
import { isServiceId } from '../procedures/procedures.ts'
import { type Message, message } from '../words/words.ts'
import type { Sheet, Source } from './sheet.ts'

export interface NeededValue {
  /** Its place on the sheet, e.g. `legs.left.bathOil`. */
  field: string
  says: Message
  /** Null where the sheet is silent. */
  source: Source | null
  /** From its maker or measured here. */
  good: boolean
}

const good = (source: Source | null): boolean => source?.kind === 'makers-sheet' || source?.kind === 'measured-here'

/**
 * What these services need from the sheet, each with its source as it stands there. The maximum pressure is not among
 * them: where the sheet has none, the first filling asks for it.
 *
 * @example neededValues(['lower-legs'], sheet).filter((value) => !value.good)
 */
export function neededValues(services: readonly string[], sheet: Sheet | null): readonly NeededValue[] {
  if (!sheet) return [{ field: 'sheet', says: message('value.sheet'), source: null, good: false }]
  const inside = services.some(isServiceId)
  const values: { field: string; says: Message; source: Source | null }[] = []
  for (const leg of inside ? legs : []) {
    const side = { leg: message(`leg.${leg}`) }
    const of = sheet.legs?.[leg]
    values.push(
      { field: `legs.${leg}.bathOil`, says: message('value.bath-oil', side), source: of?.bathOil?.source ?? null },
      { field: `legs.${leg}.washer`, says: message('value.washer', side), source: of?.washer?.source ?? null },
      {
        field: `legs.${leg}.footTorque`,
        says: message('value.foot-torque', side),
        source: of?.footTorque?.source ?? null,
      },
    )
  }
  for (const clamp of inside && sheet.body === 'dual-crown' ? (['lowerClamp', 'upperClamp'] as const) : [])
    values.push({
      field: `torques.${clamp}`,
      says: message(clamp === 'lowerClamp' ? 'value.lower-clamp-torque' : 'value.upper-clamp-torque'),
      source: sheet.torques?.[clamp]?.source ?? null,
    })
  if (services.includes('air-spring'))
    values.push({
      field: 'spring.capTorque',
      says: message('value.cap-torque'),
      source: sheet.spring.capTorque?.source ?? null,
    })
  return values.map((value) => ({ ...value, good: good(value.source) }))
}
