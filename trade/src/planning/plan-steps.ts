/** A plan: the steps of several services on one sheet, merged, nothing done twice. */
import { Refusal } from '@legwork/engine'
import type { PlannedStep } from '../journal/entry.ts'
import { legs } from '../journal/entry.ts'
import type { OnlyFor } from '../procedures/procedure.ts'
import {
  isServiceId,
  procedureSteps,
  procedures,
  type ServiceId,
  serviceIds,
  stepOrder,
} from '../procedures/procedures.ts'
import type { Sheet } from '../sheets/sheet.ts'

/** The services that have a procedure for this kind of unit. */
export function servicesFor(sheet: Sheet): readonly ServiceId[] {
  return serviceIds.filter((service) => procedures[service].kinds.some((kind) => kind === sheet.kind))
}

function isFor(only: OnlyFor | undefined, sheet: Sheet): boolean {
  if (!only) return true
  if (only.spring && only.spring !== sheet.springKind) return false
  if (only.body && only.body !== sheet.body) return false
  if (only.knob && !legs.some((leg) => sheet.legs?.[leg].fixing === 'bolt-behind-knob')) return false
  return !(only.compression && sheet.clicks.compression === null)
}

/**
 * The steps for these services on this sheet, in order, each once, with hands-on minutes (common practice, no source).
 *
 * @param options.alone  the unit came without its bike: no wheel, caliper or cables to take off
 * @throws Refusal where there is no service, or one has no procedure for this kind of unit
 * @example planSteps(['lower-legs'], sheet).map((step) => step.step)
 */
export function planSteps(
  services: readonly string[],
  sheet: Sheet,
  options: { alone?: boolean } = {},
): readonly PlannedStep[] {
  const known = services.filter(isServiceId)
  const covered = servicesFor(sheet)
  const odd = services.find((service) => !covered.some((one) => one === service))
  if (odd !== undefined || known.length === 0)
    throw new Refusal([
      {
        field: 'services',
        code: 'not-a-choice',
        came: odd ?? 'none',
        allowed: covered.join(', ') || `no procedure yet for ${sheet.kind}`,
        next: 'Choose a service that is covered, or send the unit to a specialist.',
      },
    ])
  return stepOrder.flatMap((id) => {
    const owner = known.find((service) => procedures[service].steps.includes(id))
    const step = procedureSteps[id]
    if (!owner || !isFor(step.only, sheet) || (options.alone && id === 'outside-off')) return []
    return [
      {
        step: id,
        procedure: owner,
        revision: procedures[owner].revision,
        legs: step.legs === 'each' ? legs : null,
        minutes: step.minutes,
      },
    ]
  })
}
