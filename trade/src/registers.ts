/** Registers: who and what there is. Editable, versioned; a rider can be erased. */
import type { Id } from './journal/entry.ts'
import type { Sheet, UnitKind } from './sheets/sheet.ts'

export type Role = 'owner' | 'technician' | 'junior' | 'desk' | 'reader'

/** Measures a person reads and writes in. */
export interface Measures {
  pressure: 'psi' | 'bar'
  torque: 'N·m' | 'in·lbf'
  temperature: '°C' | '°F'
  length: 'mm' | 'in'
}

export interface Person {
  id: Id
  name: string
  initials: string
  role: Role
  measures: Measures
}

export interface Rider {
  id: Id
  name: string
  /** With kit [kg]. */
  mass: number | null
  posture: string | null
  /** The rider's share on the front wheel in that posture [-]. */
  frontShare: number | null
  /** As the rider says, hours a week [h]. */
  hoursPerWeek: number | null
  contact: string | null
}

export interface Bike {
  id: Id
  rider: Id | null
  name: string
  /** [°] */
  headAngle: number | null
  /** Sprung mass of the bike resting on the fork [kg]. */
  frontMass: number | null
  /** Wheel travel per shock stroke [-]. */
  leverage: number | null
  rearSprungMass: number | null
}

/** One physical fork or rear shock with its history. */
export interface Unit {
  id: Id
  /** On its label, e.g. `U01`. */
  label: string
  kind: UnitKind
  description: string
  serial: string | null
  rider: Id | null
  bike: Id | null
  sheet: Id
}

export type Instrument = { id: Id; name: string; note: string | null } & (
  | {
      kind: 'pump' /** [m³] */
      hoseVolume: number /** Reads this much too high [-], 0.04 is 4 %. */
      offset: number /** [Pa] */
      resolution: number
    }
  | {
      kind: 'wrench'
      /** [N·m] */ low: number
      high: number
      /** Permitted error as a fraction (ISO 6789). */ class: number
      /** Grip to square [m]. */ length: number
      /** [m], 0 where none is used. */ adapterLength: number
    }
  | {
      kind: 'tape' | 'caliper' | 'scale' | 'thermometer' | 'measuring-cylinder' | 'other' /** [SI] */
      resolution: number
    }
)

/** A rider brings things once. */
export interface Visit {
  id: Id
  rider: Id | null
  /** Day promised, ISO 8601. */
  promised: string | null
  leftWith: string | null
}

export interface Registers {
  people: Person
  riders: Rider
  bikes: Bike
  units: Unit
  sheets: Sheet
  instruments: Instrument
  visits: Visit
}
export type RegisterName = keyof Registers
export const registerNames: readonly RegisterName[] = [
  'people',
  'riders',
  'bikes',
  'units',
  'sheets',
  'instruments',
  'visits',
]
