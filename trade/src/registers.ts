/** Registers: who and what there is. Editable, versioned; a rider can be erased. */
import type { Id, Instant } from './journal/entry.ts'
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
  /** The rider's own pump: how much it reads too high [-], its hose with gauge [m³]; left out until it was held beside ours. */
  pump?: { offset: number; hoseVolume: number }
  /** Taken out for good: nothing is left but the day, and nothing comes back. */
  removedOn?: Instant
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

/** How a hose was measured: its pump put on again and again without pumping, on a chamber whose volume is known. */
export interface HoseMeasured {
  /** What the gauge showed, in the order in which it was attached [Pa gauge]. */
  readings: readonly number[]
  /** The chamber it was attached to [m³]. */
  volume: number
  /** The unit with that chamber, where it was one of ours. */
  unit: Id | null
  /** Nine times in ten, as far as the gauge's step goes [m³]. */
  band: readonly [number, number]
  person: Id
  at: Instant
}

/** What is put on a valve to read a pressure. */
export interface HoseGauge {
  /** Hose and gauge [m³]. */
  hoseVolume: number
  /** Reads this much too high [-], 0.04 is 4 %. */
  offset: number
  /** Smallest step that can be read [Pa]. */
  resolution: number
  /** Left out while the hose's volume is only believed. */
  hose?: HoseMeasured
}

/** Wrenches by ISO 6789. */
export interface WrenchData {
  /** What can be set [N·m]. */
  low: number
  high: number
  /** Permitted error as a fraction (ISO 6789). */
  class: number
  /** Grip to square [m]. */
  length: number
  /** [m], 0 where none is used. */
  adapterLength: number
}

export type PlainInstrumentKind = 'tape' | 'caliper' | 'scale' | 'thermometer' | 'measuring-cylinder' | 'other'

export type Instrument = {
  id: Id
  name: string
  note: string | null
  /** No longer offered; what was read with it keeps its name. */
  putAway?: true
} & (
  | ({ kind: 'pump' } & HoseGauge)
  | ({ kind: 'gauge' } & HoseGauge)
  | ({ kind: 'wrench' } & WrenchData)
  | {
      kind: PlainInstrumentKind
      /** Smallest step that can be read [SI of what it reads; m for other]. */
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
