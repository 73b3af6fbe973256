/** A job written entry by entry, for tests: on the demo unit U01 unless told otherwise. */
import { demoSheet } from '../demo/sheets.ts'
import { demoUnits } from '../demo/units.ts'
import { saidSoFor } from '../gates/rules.ts'
import { traitsOf } from '../gates/traits.ts'
import { planSteps } from '../planning/plan-steps.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import type { Role } from '../registers.ts'
import type { Sheet } from '../sheets/sheet.ts'
import { checkEntry } from './check-entry.ts'
import {
  type AnyBookEntry,
  type AnyEntry,
  type AnyEntryDraft,
  chassisParts,
  type EntryBodies,
  type EntryKind,
  type Leg,
  legs,
  type Reading,
  type Standing,
} from './entry.ts'
import type { EntryCheck, JobContext, JobState } from './job-state.ts'
import { reduceJob } from './reduce-job.ts'

const text = 'a'.repeat(64)
const psi = 6894.757293168
const start = Date.parse('2026-05-02T09:00:00.000Z')
const pump = '0196c000-0000-7000-8000-0000000000b1'
const sheetId = '0196c000-0000-7000-8000-0000000000aa'

export const odalys = 'odalys'
export const bram = 'bram'
export const sunniva = 'sunniva'
const roles: Record<string, Role> = { odalys: 'owner', bram: 'technician', sunniva: 'junior', ikaika: 'desk' }

/** The invented sheet of a demo unit. */
export function sheetOfDemo(key: string): Sheet {
  const unit = demoUnits.find((one) => one.key === key)
  if (!unit) throw new Error(`no demo unit ${key}`)
  return demoSheet(unit, sheetId)
}

export const reading = (value: number, measure: Reading['measure']): Reading => ({
  value,
  measure,
  instrument: null,
  how: null,
})

/** Minutes before a step is ticked: what rests has rested. */
export const waitFor = (step: string): number => (isStepId(step) && procedureSteps[step].ends ? 6 : 1)

export interface Written {
  by?: string
  /** Minutes after the last entry. */
  after?: number
  standing?: Standing
  station?: string
}

/** A book being written: `put` adds whatever comes, `try` asks first and adds only what is allowed. */
export class WrittenJob {
  readonly entries: AnyEntry[] = []
  readonly sheet: Sheet
  readonly context: JobContext
  minute = 0
  by = odalys

  constructor(sheet: Sheet = sheetOfDemo('U01')) {
    this.sheet = sheet
    this.context = {
      unit: null,
      currentSheet: sheet,
      sheetAt: (id, revision) => (id === sheet.id && revision === sheet.revision ? sheet : undefined),
      roleOf: (person) => roles[person] ?? null,
    }
  }

  get state(): JobState {
    return reduceJob(this.entries, this.context)
  }

  draft<K extends EntryKind>(kind: K, body: EntryBodies[K], how: Written = {}): AnyEntryDraft {
    this.minute += how.after ?? 1
    const no = this.entries.length + 1
    const draft = {
      id: `entry-${no}`,
      workshop: 'workshop',
      stream: 'job:1',
      station: how.station ?? 'tablet',
      stationNo: no,
      person: how.by ?? this.by,
      madeAt: new Date(start + this.minute * 60_000).toISOString(),
      kind,
      version: 1,
      seen: no - 1,
      standing: how.standing ?? { mode: 'now' },
      body,
    }
    // Kind and body belong together by this function's own types.
    return draft as AnyEntryDraft
  }

  add(draft: AnyEntryDraft): string {
    const entry = { ...draft, receivedAt: draft.madeAt, seq: this.entries.length + 1 } as AnyBookEntry // adds what a book adds
    this.entries.push(entry)
    return entry.id
  }

  put<K extends EntryKind>(kind: K, body: EntryBodies[K], how: Written = {}): string {
    return this.add(this.draft(kind, body, how))
  }

  try<K extends EntryKind>(kind: K, body: EntryBodies[K], how: Written = {}): EntryCheck {
    const draft = this.draft(kind, body, how)
    const check = checkEntry(this.state, draft, this.context)
    if (check.ok) this.add(draft)
    return check
  }

  /** A tick that says everything it should. */
  tick(step: string, leg: Leg | null = null, how: Written & Partial<EntryBodies['step-done']> = {}): EntryCheck {
    return this.try('step-done', this.tickBody(step, leg, how), how)
  }

  tickBody(step: string, leg: Leg | null, how: Partial<EntryBodies['step-done']> = {}): EntryBodies['step-done'] {
    const acts = isStepId(step) ? procedureSteps[step].acts : []
    const readings: Record<string, Reading> = {
      'foot-off': reading(8e-6, 'm³'),
      'oil-in': reading(10e-6, 'm³'),
      'heights-noted': reading(0.012, 'm'),
      'heights-even': reading(0.0005, 'm'),
      'travel-air-out': reading(this.sheet.stroke.value, 'm'),
      'travel-spring-out': reading(this.sheet.stroke.value, 'm'),
      'fill-quarter': reading(22 * psi, 'Pa'),
      'fill-half': reading(44 * psi, 'Pa'),
      'fill-target': reading(88 * psi, 'Pa'),
    }
    return {
      step,
      leg,
      reading: how.reading === undefined ? (readings[step] ?? null) : how.reading,
      wrenchSet: how.wrenchSet === undefined ? (acts.includes('torques') ? 4.9 : null) : how.wrenchSet,
      saidSo: how.saidSo ?? [...saidSoFor(acts)],
    }
  }

  open(): this {
    this.put('job-opened', { unit: 'u', rider: 'r', bike: 'b', visit: 'v', asked: text, spendAllowed: null })
    return this
  }

  keepSnapshot(): this {
    for (const item of traitsOf(this.sheet.kind, this.sheet).snapshot)
      this.put('snapshot-kept', {
        item,
        reading: { ...reading(0.1, 'm'), instrument: pump },
        photos: [],
        notKnownBecause: null,
      })
    return this
  }

  lookOver(): this {
    for (const part of chassisParts) this.put('chassis-checked', { part, verdict: 'sound', found: null })
    return this
  }

  plan(services: readonly string[] = ['lower-legs']): EntryCheck {
    return this.try('plan-agreed', {
      services: [...services],
      sheet: { id: this.sheet.id, revision: this.sheet.revision },
      steps: [...planSteps(services, this.sheet)],
      answer: 'yes',
      declined: [],
      answeredBy: 'rider',
    })
  }

  setUp(pressure = 88 * psi): EntryCheck {
    return this.try('set-up-worked-out', {
      pressure,
      band: [80 * psi, 96 * psi],
      temperature: 293.15,
      ambient: 101_325,
      riderMass: 82,
      frontShare: 0.42,
      sag: 0.03,
      load: 351,
      spacers: 1,
    })
  }

  write(pressure = 88 * psi): EntryCheck {
    return this.try('setting-written', {
      pressure,
      temperature: 293.15,
      pump: null,
      spacers: 1,
      clicks: { rebound: 8, compression: null },
    })
  }

  /** Up to the agreed plan, nothing of Work yet. */
  ready(services: readonly string[] = ['lower-legs']): this {
    this.open().keepSnapshot().lookOver()
    const planned = this.plan(services)
    if (!planned.ok) throw new Error(`${planned.code}: ${planned.allowed}`)
    return this
  }

  /** Works through the plan in its order, up to a step that is left out. */
  workUntil(last: string | null = null): this {
    for (const planned of this.state.steps) {
      if (planned.step === last) return this
      if (planned.step === 'fill-quarter' && !this.state.setUp) this.setUp()
      for (const leg of planned.legs ?? [null]) {
        if (planned.done[leg ?? 'once']) continue
        const check = this.tick(planned.step, leg, { after: waitFor(planned.step) })
        if (!check.ok) throw new Error(`${planned.step}: ${check.code}: ${check.allowed}`)
      }
    }
    return this
  }

  /** A leak-down that begins when warm air has settled, and its second reading. */
  leakDown(minutes = 10): this {
    const look = (what: string, after: number) => {
      const check = this.try(
        'measured',
        { what, leg: null, phase: 'done', reading: reading(86 * psi, 'Pa') },
        { after },
      )
      if (!check.ok) throw new Error(`${what}: ${check.code}: ${check.allowed}`)
    }
    look('leak-down-start', 16)
    look('leak-down-end', minutes)
    return this
  }

  putBack(): this {
    for (const item of traitsOf(this.sheet.kind, this.sheet).putBack) this.put('put-back', { item, reading: null })
    return this
  }

  handOver(): EntryCheck {
    return this.try('handed-over', { receivedBy: text, initials: null })
  }
}

export { legs, psi, text }
