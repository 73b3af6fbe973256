/** The places of a sheet, one by one: what each is called, what it holds, and how a value is put there. */
import type { KindName } from '@legwork/engine'
import { type Leg, legs } from '../journal/entry.ts'
import { type UsualRange, usualRange } from '../limits/usual.ts'
import { isWordKey, type Message, message } from '../words/words.ts'
import { assumedPlaces } from './assumed.ts'
import type { LegSheet, Sheet, Source, SourcedNumber, SourcedText, TorqueName } from './sheet.ts'
import { footFixings, legRoles } from './sheet-choices.ts'
import { quantityAt, sheetQuantities } from './sheet-quantities.ts'

export type PlaceGroup = 'chassis' | 'spring' | 'left' | 'right' | 'adjusters'
export type HeldValue = SourcedNumber | SourcedText | { value: string; source: Source | null }

export interface SheetPlace {
  /** E.g. `legs.left.bathOil`. */
  path: string
  group: PlaceGroup
  label: Message
  /** A quantity, a text, or one of a few words (those of the choice `role` or `fixing`). */
  holds: { kind: KindName } | 'text' | { oneOf: readonly string[]; words: 'role' | 'fixing' }
  /** Null while it is empty. */
  held: HeldValue | null
  /** Plausible by common practice; never a value. */
  usual: UsualRange | null
  /** The sheet with this value here; `generic` goes once nothing on it is assumed any more. */
  put: (sheet: Sheet, value: number | string, source: Source) => Sheet
}

const still = (sheet: Sheet): Sheet =>
  sheet.generic && assumedPlaces(sheet).length === 0 ? { ...sheet, generic: false } : sheet

function putAt(sheet: Sheet, path: string, held: unknown): Sheet {
  const [first = '', second, third] = path.split('.')
  const inside: unknown = Reflect.get(sheet, first)
  const value =
    second === undefined
      ? held
      : {
          ...Object(inside),
          [second]: third === undefined ? held : { ...Object(Reflect.get(Object(inside), second)), [third]: held },
        }
  // The path is one of the table's, so that the shape stays a sheet's.
  return still({ ...sheet, [first]: value } as Sheet)
}

function heldAt(sheet: Sheet, path: string): HeldValue | null {
  const found = path.split('.').reduce<unknown>((at, name) => Reflect.get(Object(at), name), sheet)
  return (found as HeldValue | undefined) ?? null // the path is one of the table's
}

const groupOf = (path: string): PlaceGroup => {
  if (path.startsWith('legs.left')) return 'left'
  if (path.startsWith('legs.right')) return 'right'
  if (path.startsWith('clicks')) return 'adjusters'
  return path.startsWith('spring') || path === 'spacers' || path === 'maxPressure' ? 'spring' : 'chassis'
}

const torqueWords = {
  axle: 'value.axle-torque',
  caliper: 'value.caliper-torque',
  lowerClamp: 'value.lower-clamp-torque',
  upperClamp: 'value.upper-clamp-torque',
} as const satisfies Record<TorqueName, string>

const dashed = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

function labelOf(path: string): Message {
  const [first = '', leg = '', name] = path.split('.')
  if (first === 'legs' && name) {
    const key = `value.${dashed(name)}`
    // Every value of a leg has a word; a test holds it.
    return {
      key: isWordKey(key) ? key : 'value.sheet',
      params: { leg: message(leg === 'left' ? 'leg.left' : 'leg.right') },
    }
  }
  if (path === 'spring.capTorque') return message('value.cap-torque')
  if (first === 'torques') return { key: torqueWords[leg as TorqueName], params: {} } // the table's own names
  const key = `field.${first === 'spring' ? leg : path}`
  return { key: isWordKey(key) ? key : 'value.sheet', params: {} }
}

function quantityPlace(sheet: Sheet, path: string, leg: LegSheet | null): SheetPlace {
  const kind = quantityAt(path)?.kind ?? 'number'
  return {
    path,
    group: groupOf(path),
    label: labelOf(path),
    holds: { kind },
    held: heldAt(sheet, path),
    usual: usualRange(path.split('.').at(-1) ?? '', sheet, leg),
    put: (to, value, source) => putAt(to, path, { value: Number(value), source }),
  }
}

function choicePlace(leg: Leg, of: LegSheet, words: 'role' | 'fixing'): SheetPlace {
  const value = of[words]
  return {
    path: `legs.${leg}.${words}`,
    group: leg,
    label: labelOf(`legs.${leg}.${words}`),
    holds: { oneOf: words === 'role' ? legRoles : footFixings, words },
    held: value === null ? null : { value, source: of.sources?.[words] ?? null },
    usual: null,
    put: (to, chosen, source) => {
      const sources = { ...to.legs?.[leg].sources, [words]: source }
      return putAt(putAt(to, `legs.${leg}.${words}`, chosen), `legs.${leg}.sources`, sources)
    },
  }
}

function legPlaces(sheet: Sheet, leg: Leg): readonly SheetPlace[] {
  const of = sheet.legs?.[leg]
  if (!of) return []
  const quantity = (name: string): SheetPlace => quantityPlace(sheet, `legs.${leg}.${name}`, of)
  const washer: SheetPlace = {
    path: `legs.${leg}.washer`,
    group: leg,
    label: labelOf(`legs.${leg}.washer`),
    holds: 'text',
    held: of.washer,
    usual: null,
    put: (to, value, source) => putAt(to, `legs.${leg}.washer`, { value: String(value), source }),
  }
  return [
    choicePlace(leg, of, 'role'),
    choicePlace(leg, of, 'fixing'),
    quantity('bathOil'),
    quantity('bathOilViscosity'),
    washer,
    quantity('footTorque'),
  ]
}

const airOnly = ['bore', 'shaft', 'positiveShaft', 'positiveVolume', 'negativeVolume', 'equalisingStroke']
const airToo = [...airOnly, 'spacerVolume', 'chamberOil', 'capTorque']

/** Whether a kind of unit has such a place at all. */
function belongs(sheet: Sheet, path: string): boolean {
  const name = path.replace('spring.', '')
  const fork = sheet.kind.startsWith('fork')
  if (name.endsWith('Clamp')) return sheet.body === 'dual-crown'
  if (path.startsWith('torques')) return fork
  if (['rate', 'preload'].includes(name)) return sheet.springKind === 'coil'
  if (airToo.includes(name) || ['spacers', 'maxPressure'].includes(name))
    return sheet.springKind === 'air' || (name === 'capTorque' && fork)
  if (['stanchion', 'lowerVolume', 'lowerRod'].includes(name) || path.startsWith('bushings')) return fork
  return name.startsWith('damperGas') ? !fork : true
}

/**
 * Every place that a sheet of its kind has, filled or empty, in the order in which it is read.
 *
 * @example sheetPlaces(sheet).filter((place) => place.held === null).map((place) => place.path)
 */
export function sheetPlaces(sheet: Sheet): readonly SheetPlace[] {
  const plain = Object.keys(sheetQuantities).filter((path) => !path.startsWith('legs.') && belongs(sheet, path))
  return [...plain.map((path) => quantityPlace(sheet, path, null)), ...legs.flatMap((leg) => legPlaces(sheet, leg))]
}

/** One place by its path; null where a sheet of this kind has none. */
export function placeOn(sheet: Sheet, path: string): SheetPlace | null {
  return sheetPlaces(sheet).find((place) => place.path === path) ?? null
}
