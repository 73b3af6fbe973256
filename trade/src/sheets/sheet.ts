/** Sheets: the technical data of a unit. Every value carries where it comes from; an empty value stays empty. */
import type { Id, Instant, Leg } from '../journal/entry.ts'

export type SourceKind = 'makers-sheet' | 'measured-here' | 'worked-out' | 'handbook' | 'common-practice' | 'rider-said'

export interface Source {
  kind: SourceKind
  document: string | null
  revision: string | null
  page: string | null
  person: Id | null
  at: Instant | null
  instrument: Id | null
}

/** A quantity [SI] with where it comes from. */
export interface SourcedNumber {
  value: number
  source: Source
}
export interface SourcedText {
  value: string
  source: Source
}

export type UnitKind = 'fork-air' | 'fork-coil' | 'shock-air' | 'shock-coil'
export type Body = 'single-crown' | 'dual-crown' | 'in-line' | 'piggyback'
export type DamperKind = 'open-bath' | 'sealed-cartridge' | 'bladder-cartridge' | 'in-line-ifp' | 'piggyback-ifp'
export type LegRole = 'spring' | 'damper' | 'both'
export type FootFixing = 'hollow-bolt' | 'nut-on-shaft' | 'bolt-behind-knob' | 'captive-bolt'

/** Where a measurement is no longer good [SI]: too much above `watch` and `fail`, too little below the other two. */
export interface Bounds {
  watch?: number
  fail?: number
  watchBelow?: number
  failBelow?: number
}

/** A limit that measurements are judged by. */
export interface Limit extends Bounds {
  source: Source
}

export interface LegSheet {
  role: LegRole
  fixing: FootFixing | null
  /** Where role and fixing come from; not on sheets older than this field. */
  sources?: { role?: Source; fixing?: Source }
  /** Bath oil [m³]. */
  bathOil: SourcedNumber | null
  /** Kinematic viscosity at 40 °C [m²/s]. */
  bathOilViscosity: SourcedNumber | null
  washer: SourcedText | null
  /** Foot fastener [N·m]. */
  footTorque: SourcedNumber | null
}

/** Fasteners that a fork shares with its bike, and the clamps of a second crown. */
export type TorqueName = 'axle' | 'caliper' | 'lowerClamp' | 'upperClamp'

/** One revision of a sheet. */
export interface Sheet {
  id: Id
  /** As written on it, e.g. `Q35-150`. */
  name: string
  revision: string
  /** Made of assumed dimensions: the maker's sheet decides. */
  generic: boolean
  kind: UnitKind
  body: Body
  damper: DamperKind
  /** Stanchion outside diameter [m]; null for a shock. */
  stanchion: SourcedNumber | null
  /** Full stroke [m]. */
  stroke: SourcedNumber
  /** The spring in the engine's fields (SI), one source for each. */
  spring: { [field: string]: SourcedNumber }
  springKind: 'air' | 'coil'
  spacers: SourcedNumber | null
  /** Air closed in the lower legs, per leg [m³], before oil. */
  lowerVolume: SourcedNumber | null
  /** Largest pressure that may be filled, gauge [Pa]. */
  maxPressure: SourcedNumber | null
  /** Visible stanchion at full length [m], wiper to crown. */
  freeLength: SourcedNumber | null
  /** Axle to lower bushing `a`, between bushings `b` [m]. */
  bushings: { a: SourcedNumber; b: SourcedNumber } | null
  clicks: { rebound: SourcedNumber | null; compression: SourcedNumber | null }
  legs: { [L in Leg]: LegSheet } | null
  /** Of a fork [N·m]; not on sheets older than this field. */
  torques?: { [T in TorqueName]?: SourcedNumber | null }
  limits: { [what: string]: Limit }
}
