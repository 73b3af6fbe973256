import type { ForkParameters } from '@legwork/drawing'
import type { SourceKind } from '@legwork/trade'
import type { Letterhead } from './letterhead.ts'
import type { RuledRow, Section } from './ruled-section.ts'
import type { PageVerdict } from './verdict-mark.ts'

/** A figure as the person reads it (the caller formats it), with where it comes from. */
export type PageFigure = {
  /** Where on the drawing it is set. */
  place: 'pressure' | 'spacers' | 'rebound' | 'compression' | 'sag' | 'bath-oil'
  name: string
  figure: string
  source: SourceKind
  detail: string | null
}

/** What the hand-over page prints. Null or an empty list: the page says so in a sentence. */
export type HandOverPage = {
  shop: Letterhead
  job: string
  date: string
  handedOverBy: string | null
  rider: string | null
  /** Mass with kit and posture, as the set-up reckoned with them. */
  riderKit: string | null
  unit: string
  serial: string | null
  /** Sprung by a coil: no pressure is missing where none is set. */
  coil: boolean
  asked: string | null
  settings: PageFigure[]
  /** Null where the sheet lacks the dimensions, or for a unit that is not an air fork: then no drawing. */
  drawing: ForkParameters | null
  found: { verdict: PageVerdict; what: string; figure: string; source: SourceKind }[]
  /** Whose limits they were held against. */
  limits: string | null
  done: RuledRow[]
  /** Whose hands it was done with. */
  hands: string | null
  beforeAfter: { what: string; before: string; after: string; source: SourceKind }[]
  holdsAir: RuledRow[]
  /** What the setting is on the trail and on the rider's own pump. */
  elsewhere: RuledRow[]
  next: RuledRow[]
  beforeYouRide: string[]
  declined: string[]
  /** Gates passed, what is not known, what came late or from elsewhere. */
  kept: string[]
  cautions: string[]
  receivedBy: { name: string; time: string } | null
  carriedOver: boolean
  /** Address of the unit's card, printed as a QR code. */
  address: string
}

export type SectionPair = readonly [Section, Section | null]
