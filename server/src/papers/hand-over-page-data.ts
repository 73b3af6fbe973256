import type { SourceKind } from '@legwork/trade'
import type { ForkDrawing } from './fork-drawing.ts'

export type PageVerdict = 'pass' | 'watch' | 'fail' | 'cannot-tell'

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
  workshop: string
  job: string
  date: string
  handedOverBy: string
  rider: string | null
  /** With kit. */
  riderMass: string | null
  unit: string
  asked: string | null
  settings: PageFigure[]
  /** Null where the sheet lacks the dimensions, or for a unit that is not an air fork: then no drawing. */
  drawing: ForkDrawing | null
  found: { verdict: PageVerdict; what: string; figure: string; source: SourceKind }[]
  done: { what: string; figure: string; source: SourceKind | null }[]
  beforeAfter: { what: string; before: string; after: string; source: SourceKind }[]
  holdsAir: string | null
  next: { service: string; hours: string; date: string } | null
  beforeYouRide: string[]
  declined: string[]
  waivers: string[]
  notes: string[]
  carriedOver: boolean
  cautions: string[]
  receivedBy: { name: string; time: string } | null
  /** Address of the unit's card, printed as a QR code. */
  address: string
}
