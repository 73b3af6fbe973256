/** The rests of a job: what begins and ends them, and how they stand. */
import { tooEarly } from '../gates/rules-finishing.ts'
import type { ProcedureStep } from '../procedures/procedure.ts'
import type { Rest } from '../rests/rest.ts'
import { type RestKind, restMinutes } from '../rests/rest-kinds.ts'
import { momentOf, restBegun, rested, restKnown } from '../rests/rested.ts'
import type { AnyEntry } from './entry.ts'
import type { Basis, Blocked } from './job-state.ts'
import type { Progress } from './progress.ts'

type Rests = Basis['rests']

/** Air went in or out: what rested on the pressure begins anew. */
export function withoutAir({ settle: _settle, leak: _leak, ...others }: Rests): Rests {
  return others
}

export function endRest(progress: Progress, kind: RestKind, entry: AnyEntry): void {
  const rest = progress.rests[kind]
  if (rest && !rest.ended) progress.rests = { ...progress.rests, [kind]: { ...rest, ended: momentOf(entry) } }
}

/** What a tick begins and ends. */
export function restStep(progress: Progress, step: ProcedureStep, entry: AnyEntry): void {
  if (step.ends) endRest(progress, step.ends, entry)
  if (step.makes.pressure) progress.rests = withoutAir(progress.rests)
  if (step.begins) progress.rests = { ...progress.rests, [step.begins]: restBegun(entry) }
}

/** Every entry tells the rests that its station has them in its book. */
export function toldOfRests(rests: Rests, entry: AnyEntry): Rests {
  if (!entry.clock) return rests
  const told: Rests = {}
  for (const kind of kinds) {
    const rest = rests[kind]
    if (rest) told[kind] = restKnown(rest, entry)
  }
  return told
}

const kinds = Object.keys(restMinutes) as readonly RestKind[] // the table's own names

/**
 * What keeps a leak-down from beginning yet, by the server's time alone; a station's own clock is asked when it is written.
 *
 * @param at  when it is looked at [ms]
 */
export function settling({ rests: { settle } }: Pick<Progress, 'rests'>, at: number): Blocked | null {
  if (!settle || settle.ended) return null
  const moment = new Date(at).toISOString()
  const settled = rested(settle, { station: '', clock: null, madeAt: moment, receivedAt: moment })
  return settled.minutes === null ? null : tooEarly(settled)
}

/** The rests that began, in the order of the work. */
export function restsOf({ rests }: Pick<Progress, 'rests'>): readonly Rest[] {
  return kinds.flatMap((kind) => {
    const clock = rests[kind]
    if (!clock) return []
    const over = clock.ended ? rested(clock, clock.ended) : null
    return [{ kind, entry: clock.entry, wanted: restMinutes[kind], clock, over }]
  })
}
