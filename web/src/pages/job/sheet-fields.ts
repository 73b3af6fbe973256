/** Fields of a sheet that a plan or a set-up asks for: what each is called, how it is read, and how a value gets its place. */
import {
  type Leg,
  type Message,
  message,
  type Reading,
  type Sheet,
  type Source,
  type UsualRange,
  usualRange,
} from '@legwork/trade'

export type FieldValue = { number: number } | { text: string }

export interface SheetField {
  id: string
  label: Message
  /** Null for a text. */
  measure: Reading['measure'] | null
  usual: UsualRange | null
  put(sheet: Sheet, value: FieldValue, source: Source): Sheet
}

const sourced = (value: FieldValue, source: Source) => ('number' in value ? { value: value.number, source } : null)

function putLeg(sheet: Sheet, leg: Leg, patch: Partial<NonNullable<Sheet['legs']>['left']>): Sheet {
  if (!sheet.legs) return sheet
  return { ...sheet, legs: { ...sheet.legs, [leg]: { ...sheet.legs[leg], ...patch } } }
}

function legField(sheet: Sheet, leg: Leg, what: string): SheetField | null {
  const side = { leg: message(`leg.${leg}`) }
  const id = `legs.${leg}.${what}`
  const of = sheet.legs?.[leg] ?? null
  switch (what) {
    case 'bathOil':
      return {
        id,
        label: message('value.bath-oil', side),
        measure: 'm³',
        usual: usualRange('bathOil', sheet, of),
        put: (to, value, source) => putLeg(to, leg, { bathOil: sourced(value, source) }),
      }
    case 'footTorque':
      return {
        id,
        label: message('value.foot-torque', side),
        measure: 'N·m',
        usual: usualRange('footTorque', sheet, of),
        put: (to, value, source) => putLeg(to, leg, { footTorque: sourced(value, source) }),
      }
    case 'washer':
      return {
        id,
        label: message('value.washer', side),
        measure: null,
        usual: null,
        put: (to, value, source) => putLeg(to, leg, { washer: 'text' in value ? { value: value.text, source } : null }),
      }
    default:
      return null
  }
}

const lengths = ['bore', 'shaft', 'equalisingStroke', 'lowerRod'] as const
const volumes = ['positiveVolume', 'negativeVolume', 'spacerVolume'] as const

/** The dimensions that a pressure is worked out from, in the order in which they are asked. */
export const springFields = [
  'spring.bore',
  'spring.shaft',
  'spring.positiveVolume',
  'spring.negativeVolume',
  'spring.equalisingStroke',
  'spring.spacerVolume',
  'spacers',
  'lowerVolume',
  'spring.lowerRod',
] as const

function springField(name: string): SheetField | null {
  const length = lengths.find((one) => one === name)
  const volume = volumes.find((one) => one === name)
  const known = length ?? volume
  if (!known)
    return name === 'capTorque'
      ? {
          id: 'spring.capTorque',
          label: message('value.cap-torque'),
          measure: 'N·m',
          usual: usualRange('capTorque', null),
          put: (to, value, source) => putSpring(to, name, value, source),
        }
      : null
  return {
    id: `spring.${known}`,
    label: message(`field.${known}`),
    measure: length ? 'm' : 'm³',
    usual: null,
    put: (to, value, source) => putSpring(to, known, value, source),
  }
}

function putSpring(sheet: Sheet, name: string, value: FieldValue, source: Source): Sheet {
  const put = sourced(value, source)
  return put ? { ...sheet, spring: { ...sheet.spring, [name]: put } } : sheet
}

function plainField(sheet: Sheet, id: string): SheetField | null {
  switch (id) {
    case 'maxPressure':
    case 'freeLength':
      return {
        id,
        label: message(`field.${id}`),
        measure: id === 'maxPressure' ? 'Pa' : 'm',
        usual: usualRange(id, sheet),
        put: (to, value, source) => ({ ...to, [id]: sourced(value, source) }),
      }
    case 'spacers':
    case 'lowerVolume':
      return {
        id,
        label: message(`field.${id}`),
        measure: id === 'spacers' ? 'count' : 'm³',
        usual: null,
        put: (to, value, source) => ({ ...to, [id]: sourced(value, source) }),
      }
    default:
      return null
  }
}

/** A field by its place on the sheet, e.g. `legs.left.bathOil`; null where it can't be filled in here. */
export function sheetField(sheet: Sheet, id: string): SheetField | null {
  const [first, second, third] = id.split('.')
  if (first === 'legs' && (second === 'left' || second === 'right') && third) return legField(sheet, second, third)
  if (first === 'spring' && second) return springField(second)
  return plainField(sheet, id)
}

/** The dimensions that are not on the sheet yet. */
export function missingForSpring(sheet: Sheet): readonly SheetField[] {
  return springFields
    .filter((id) => {
      const [first, second] = id.split('.')
      if (first === 'spring') return second !== undefined && !sheet.spring[second]
      return id === 'spacers' ? !sheet.spacers : !sheet.lowerVolume
    })
    .flatMap((id) => sheetField(sheet, id) ?? [])
}

/**
 * The revision after this one: the maker's letter stays, a count of what was filled in here follows it.
 *
 * @example nextRevision('C') // 'C.1'
 * @example nextRevision('C.1') // 'C.2'
 */
export function nextRevision(revision: string): string {
  const found = /^(.*)\.(\d+)$/.exec(revision)
  return found ? `${found[1]}.${Number(found[2]) + 1}` : `${revision}.1`
}
