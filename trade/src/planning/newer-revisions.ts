/** What has come since a plan was agreed: offered, never taken by itself. */
import type { EntryBodies } from '../journal/entry.ts'
import { isServiceId, procedures, type ServiceId } from '../procedures/procedures.ts'
import type { Sheet } from '../sheets/sheet.ts'

export interface NewerRevisions {
  /** The unit's sheet as it is now, where the plan rests on another revision of it or on another sheet. */
  sheet: Sheet | null
  /** Services whose procedure has a later revision than the plan's steps. */
  procedures: readonly ServiceId[]
}

type Pinned = Pick<EntryBodies['plan-agreed'], 'answer' | 'services' | 'sheet' | 'steps'>

/**
 * Null where nothing newer is there, or nothing is planned.
 *
 * @param current  the unit's sheet as it is now
 * @example newerRevisions(plan, { ...sheet, revision: 'D' })?.sheet?.revision // 'D'
 */
export function newerRevisions(plan: Pinned | null, current: Sheet | null): NewerRevisions | null {
  if (!plan || plan.answer === 'no') return null
  const same = current === null || (current.id === plan.sheet.id && current.revision === plan.sheet.revision)
  const later = plan.services.filter(isServiceId).filter((service) => {
    const pinned = plan.steps.filter((step) => step.procedure === service).map((step) => step.revision)
    return pinned.some((revision) => revision < procedures[service].revision)
  })
  return same && later.length === 0 ? null : { sheet: same ? null : current, procedures: later }
}
