/** What is filled in while a unit is taken in; nothing of it is written before the job is opened. */
import {
  type Bike,
  type Body,
  type DamperKind,
  type FootFixing,
  type Id,
  type Leg,
  type Posture,
  postureOf,
  type Rider,
  type UnitKind,
} from '@legwork/trade'

export const unitKinds: readonly UnitKind[] = ['fork-air', 'fork-coil', 'shock-air', 'shock-coil']
export const fixings: readonly FootFixing[] = ['nut-on-shaft', 'bolt-behind-knob', 'hollow-bolt', 'captive-bolt']
export const bodiesOf = (kind: UnitKind): readonly Body[] =>
  isFork(kind) ? ['single-crown', 'dual-crown'] : ['in-line', 'piggyback']
export const dampersOf = (kind: UnitKind): readonly DamperKind[] =>
  isFork(kind) ? ['sealed-cartridge', 'bladder-cartridge', 'open-bath'] : ['in-line-ifp', 'piggyback-ifp']

/** Forks that no procedure is written for yet, by what tells them: their order of work is another one. */
export type NotCovered = 'upside-down' | 'one-legged' | 'electric'

export const isFork = (kind: UnitKind): boolean => kind === 'fork-air' || kind === 'fork-coil'

/** `maker`: its sheet's name and revision, still empty. `here`: a sheet of the register. `generic`: assumed dimensions. */
export type SheetWay = 'maker' | 'here' | 'generic'

export interface NewUnit {
  label: string
  serial: string
  kind: UnitKind
  body: Body
  damper: DamperKind
  /** Chosen in place of a body or damper that is covered: said so, and not taken in as something else. */
  notCovered: NotCovered | null
  /** [m] */
  stanchion: number | null
  stroke: number | null
  springLeg: Leg
  fixing: Record<Leg, FootFixing | null>
  sheetWay: SheetWay
  sheetName: string
  sheetRevision: string
  /** Of the register, for `here`; the size's key, for `generic`. */
  sheetChosen: string | null
}

export const blankUnit: NewUnit = {
  label: '',
  serial: '',
  kind: 'fork-air',
  body: 'single-crown',
  damper: 'sealed-cartridge',
  notCovered: null,
  stanchion: null,
  stroke: null,
  springLeg: 'left',
  fixing: { left: null, right: null },
  sheetWay: 'maker',
  sheetName: '',
  sheetRevision: '',
  sheetChosen: null,
}

export interface RiderDraft {
  way: 'known' | 'new' | 'none'
  id: Id | null
  name: string
  /** [kg] */
  mass: number | null
  posture: Posture
  share: number | null
  /** A week [h]. */
  hours: number | null
}

export const blankRider: RiderDraft = {
  way: 'new',
  id: null,
  name: '',
  mass: null,
  posture: 'standing',
  share: null,
  hours: null,
}

export const riderDraftOf = (rider: Rider): RiderDraft => ({
  way: 'known',
  id: rider.id,
  name: rider.name,
  mass: rider.mass,
  posture: postureOf(rider.posture),
  share: rider.frontShare,
  hours: rider.hoursPerWeek,
})

export interface BikeDraft {
  /** Whether the unit came on it. */
  here: boolean
  name: string
  /** [°] */
  headAngle: number | null
  /** [kg] */
  frontMass: number | null
}

export const bikeDraftOf = (bike: Bike | undefined, here: boolean): BikeDraft => ({
  here,
  name: bike && bike.name !== '–' ? bike.name : '',
  headAngle: bike?.headAngle ?? null,
  frontMass: bike?.frontMass ?? null,
})

export interface VisitDraft {
  asked: string
  /** In the shop's money; null: ask first. */
  spend: number | null
  /** ISO 8601 day, or empty. */
  promised: string
  leftWith: string
}

export const blankVisit: VisitDraft = { asked: '', spend: null, promised: '', leftWith: '' }
