/** What an entry asks of the gates, on what its job has added up to so far. */
import type { Asked, Rule } from '../gates/asked.ts'
import type { Facts } from '../gates/facts.ts'
import { firstShut, rules } from '../gates/rules.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import { momentOf, type Rested, rested } from '../rests/rested.ts'
import { neededValues } from '../sheets/needed-values.ts'
import type { AnyEntry } from './entry.ts'
import type { Blocked } from './job-state.ts'
import { doneAt, factsFor, lengthAllowedBy, maximumFor, type Progress, sheetOf, traitsFor } from './progress.ts'

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
    leakDown: { begins: false, settled: null },
    off: { ...progress.off, lengthAllowed: lengthAllowedBy(sheetOf(progress)) },
  }
}

/** How long the air has settled when this entry was made; null where none was filled. */
function settledAt({ rests, context }: Progress, entry: AnyEntry): Rested | null {
  return rests.settle ? rested(rests.settle, momentOf(entry), context.offline) : null
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
      return { ...plain, acts, leg, reading, wrenchSet, saidSo, fills: fills ?? null, pressure }
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
      return {
        ...plain,
        leakDown: { begins: entry.body.what === 'leak-down-start', settled: settledAt(progress, entry) },
      }
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
