/** What an entry asks of the gates, on what its job has added up to so far. */
import type { Asked, Rule } from '../gates/asked.ts'
import type { Facts } from '../gates/facts.ts'
import { firstShut, rules } from '../gates/rules.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import type { RestKind } from '../rests/rest-kinds.ts'
import { momentOf, type Rested, rested } from '../rests/rested.ts'
import { neededValues } from '../sheets/needed-values.ts'
import type { AnyEntry } from './entry.ts'
import type { Blocked } from './job-state.ts'
import { doneAt, factsFor, lengthAllowedBy, maximumFor, type Progress, sheetOf, traitsFor } from './progress.ts'

/** What is asked ahead of time is not held up by what still rests. */
const restedLongAgo: Rested = { minutes: Number.POSITIVE_INFINITY, by: null, apart: null }

/** An asking that says nothing of its own yet. */
export function plainAsking(progress: Progress, facts: Facts): Asked {
  return {
    entry: 'noted',
    acts: [],
    facts,
    traits: traitsFor(progress),
    leg: null,
    saidSo: [],
    wrenchSet: null,
    reading: null,
    snapshotItem: null,
    fills: null,
    pressure: null,
    target: progress.setUp?.pressure ?? null,
    maximum: maximumFor(progress),
    missing: [],
    soaked: restedLongAgo,
    leakDown: { act: null, rested: null },
    readBefore: progress.snapshot.pressure?.reading != null,
    off: { ...progress.off, lengthAllowed: lengthAllowedBy(sheetOf(progress)) },
  }
}

/** How long something has rested when this entry was made; null where nothing was put to rest. */
function restedAt({ rests, context }: Progress, entry: AnyEntry, kind: RestKind): Rested | null {
  const rest = rests[kind]
  return rest ? rested(rest, momentOf(entry), context.offline) : null
}

const leakDownActs = { 'leak-down-start': 'begins', 'leak-down-end': 'ends' } as const

function leakDownOf(progress: Progress, entry: Extract<AnyEntry, { kind: 'measured' }>): Asked['leakDown'] {
  const { what } = entry.body
  if (what !== 'leak-down-start' && what !== 'leak-down-end') return { act: null, rested: null }
  const act = leakDownActs[what]
  return { act, rested: restedAt(progress, entry, act === 'begins' ? 'settle' : 'leak') }
}

/** A press fills as a step does. */
function filledToPress({ body: { what, reading } }: Extract<AnyEntry, { kind: 'measured' }>): number | null {
  return what === 'press-pressure' && reading.measure === 'Pa' ? reading.value : null
}

function asking(progress: Progress, entry: AnyEntry): Asked {
  const at = doneAt(entry)
  const facts = factsFor(progress, at, entry.kind === 'step-done' ? entry.person : null)
  const plain: Asked = { ...plainAsking(progress, facts), entry: entry.kind }
  switch (entry.kind) {
    case 'step-done': {
      const { step, leg, reading, wrenchSet, saidSo } = entry.body
      if (!isStepId(step)) return plain
      const { acts, fills } = procedureSteps[step]
      const pressure = fills && reading?.measure === 'Pa' ? reading.value : null
      const soaked = restedAt(progress, entry, 'soak')
      return { ...plain, acts, leg, reading, wrenchSet, saidSo, fills: fills ?? null, pressure, soaked }
    }
    case 'plan-agreed': {
      if (entry.body.answer === 'no') return { ...plain, entry: 'noted' }
      const { sheet, services } = entry.body
      const frozen = progress.context.sheetAt(sheet.id, sheet.revision) ?? null
      const missing = neededValues(services, frozen).filter((value) => !value.good)
      return { ...plain, missing: missing.map((value) => value.says) }
    }
    case 'snapshot-kept':
      return { ...plain, snapshotItem: entry.body.item, reading: entry.body.reading }
    case 'set-up-worked-out':
    case 'setting-written':
      return { ...plain, pressure: entry.body.pressure }
    case 'measured':
      return { ...plain, leakDown: leakDownOf(progress, entry), pressure: filledToPress(entry) }
    default:
      return plain
  }
}

/**
 * The gate that an entry meets shut, or null.
 *
 * @param table  the gates that are asked; all of them where nothing is said
 */
export function shutFor(progress: Progress, entry: AnyEntry, table: readonly Rule[] = rules): Blocked | null {
  return firstShut(
    asking(progress, entry),
    progress.waivers.map((waiver) => waiver.gate),
    table,
  )
}
