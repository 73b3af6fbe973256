/** Writes what was filled in: registers first, then the entry that opens the job. */
import { type Bike, type Id, type Rider, type Source, type Stream, say, type Unit, type Visit } from '@legwork/trade'
import type { AllRegisters } from '../../offline/hooks.tsx'
import type { Station } from '../../offline/station.ts'
import { sheetForNewUnit } from './new-unit-sheet.ts'
import { type BikeDraft, isFork, type NewUnit, type RiderDraft, type VisitDraft } from './take-in-draft.ts'

export interface TakeInForms {
  /** A known unit, or a new one. */
  unit: Unit | NewUnit
  rider: RiderDraft
  bike: BikeDraft
  visit: VisitDraft
  /** The visit that a further job belongs to. */
  further: Visit | null
}

export const isKnown = (unit: Unit | NewUnit): unit is Unit => 'id' in unit

/** What is still missing, in the words of its fields. */
export function lacksOf({ unit, rider }: Pick<TakeInForms, 'rider'> & { unit: Unit | NewUnit | null }): string[] {
  const lacks: string[] = []
  if (!unit) return [say('take-in.unit')]
  if (!isKnown(unit)) {
    if (unit.notCovered) lacks.push(say('take-in.not-covered.lack'))
    if (unit.label.trim() === '') lacks.push(say('take-in.label'))
    if (unit.stroke === null) lacks.push(say(isFork(unit.kind) ? 'take-in.travel' : 'take-in.stroke'))
    if (unit.sheetWay === 'maker' && unit.sheetName.trim() === '') lacks.push(say('take-in.sheet-name'))
    if (unit.sheetWay === 'maker' && unit.sheetRevision.trim() === '') lacks.push(say('take-in.sheet-revision'))
    if (unit.sheetWay !== 'maker' && unit.sheetChosen === null) lacks.push(say('take-in.sheet-way'))
  }
  if (rider.way === 'new' && rider.name.trim() === '') lacks.push(say('take-in.rider.name'))
  if (rider.way === 'known' && rider.id === null) lacks.push(say('take-in.rider'))
  return lacks
}

type Register = { [R in keyof AllRegisters]: { register: R; body: AllRegisters[R][number] } }[keyof AllRegisters]

function riderOf(draft: RiderDraft, riders: readonly Rider[], fresh: () => Id): Rider | null {
  const { mass, posture, share: frontShare, hours: hoursPerWeek } = draft
  const said = { mass, posture, frontShare, hoursPerWeek }
  if (draft.way === 'new') return { id: fresh(), name: draft.name.trim(), contact: null, ...said }
  const before = draft.way === 'known' ? riders.find((one) => one.id === draft.id) : undefined
  return before ? { ...before, ...said } : null
}

function bikeOf(draft: BikeDraft, before: Bike | undefined, rider: Id | null, fresh: () => Id): Bike | null {
  const { headAngle, frontMass } = draft
  const nothing = draft.name.trim() === '' && headAngle === null && frontMass === null
  if (!draft.here && !before && nothing) return null
  const name = draft.name.trim() || before?.name || '–'
  const rear = { leverage: before?.leverage ?? null, rearSprungMass: before?.rearSprungMass ?? null }
  return { id: before?.id ?? fresh(), rider: before?.rider ?? rider, name, headAngle, frontMass, ...rear }
}

function describe(made: NewUnit): string {
  const kind = say(`take-in.kind.${made.kind}`)
  const travel = Math.round((made.stroke ?? 0) * 1000)
  return isFork(made.kind) && made.stanchion !== null
    ? say('take-in.unit-says', { stanchion: Math.round(made.stanchion * 1000), kind, travel })
    : say('take-in.unit-says.plain', { kind, travel })
}

/** Opens the job and gives its stream. */
export async function openJob(
  station: Station,
  person: Id,
  registers: AllRegisters,
  forms: TakeInForms,
): Promise<Stream> {
  const fresh = station.newId
  const measured: Source = {
    kind: 'measured-here',
    document: null,
    revision: null,
    page: null,
    person,
    at: station.now(),
    instrument: null,
  }
  const lines: Register[] = []
  const rider = riderOf(forms.rider, registers.riders, fresh)
  if (rider) lines.push({ register: 'riders', body: rider })
  const known = isKnown(forms.unit) ? forms.unit : null
  const before = registers.bikes.find((one) => one.id === known?.bike)
  const bike = bikeOf(forms.bike, before, rider?.id ?? null, fresh)
  if (bike) lines.push({ register: 'bikes', body: bike })
  let unit: Unit
  if (isKnown(forms.unit)) {
    unit = { ...forms.unit, bike: bike?.id ?? forms.unit.bike, rider: rider?.id ?? forms.unit.rider }
    if (unit.bike !== forms.unit.bike || unit.rider !== forms.unit.rider) lines.push({ register: 'units', body: unit })
  } else {
    const { unit: made } = forms
    const sheet = sheetForNewUnit(made, fresh(), measured)
    if (sheet) lines.push({ register: 'sheets', body: sheet })
    unit = {
      id: fresh(),
      label: made.label.trim(),
      kind: made.kind,
      description: describe(made),
      serial: made.serial.trim() || null,
      rider: rider?.id ?? null,
      bike: bike?.id ?? null,
      sheet: sheet?.id ?? made.sheetChosen ?? '',
    }
    lines.push({ register: 'units', body: unit })
  }
  const { promised, leftWith, asked, spend } = forms.visit
  const visit: Visit = forms.further ?? {
    id: fresh(),
    rider: rider?.id ?? null,
    promised: promised || null,
    leftWith: leftWith.trim() || null,
  }
  if (!forms.further) lines.push({ register: 'visits', body: visit })
  await station.writeRegisters(person, lines)
  const stream: Stream = `job:${fresh()}`
  const body = {
    unit: unit.id,
    rider: rider?.id ?? null,
    bike: forms.bike.here ? (bike?.id ?? null) : null,
    visit: visit.id,
    asked: asked.trim() ? await station.keepText(asked.trim()) : null,
    spendAllowed: spend,
  }
  await station.keepDraft(station.draft(stream, 'job-opened', body, person))
  return stream
}
