/** Why an entry is not taken, apart from the gates: every code and when. A shut gate's code is `gate.` and its name. */
import type { GateId } from './entry.ts'

export const entryRefusalCodes = {
  'job.not-open': 'An entry before the job is opened.',
  'job.already-open': 'A job is opened twice.',
  'job.closed':
    'An entry after the job was handed over or called off, other than notes, readings, strikes and rulings.',
  'job.stopped': 'A step or decision while the job is stopped.',
  'step.not-in-plan': 'A tick of a step that the agreed plan does not have.',
  'step.leg': 'A tick without its leg, or with a leg where the step is done once.',
  'step.already-done': 'A tick of what is ticked already and still so.',
  'step.needs': 'A tick of a step that is not possible yet.',
  'set-up.missing': 'Air before the pressure for the rider is worked out.',
  'plan.empty': 'A plan agreed without steps.',
  'pressure.range': 'A pressure that is no number from 0 up.',
  'work.unfinished': 'Ready or handed over while steps of the plan are open.',
  'gate.no-way-round': 'A waiver of a gate that nobody can waive.',
  'role.decides': 'A decision by somebody who is neither owner nor technician.',
  'strike.already': 'A strike of what is struck already.',
  'strike.opening': 'A strike of the opening of the job.',
  'strike.of-strike': 'A strike of a strike.',
  'entry.unknown': 'A strike of an entry that this book does not have.',
  'ruling.not-contested': 'A ruling over an entry that is not contested.',
  'stop.none': 'A stop lifted where there is none.',
  'stop.condemned': 'A stop lifted while a part stays condemned.',
  'late.in-future': 'Something done after it was written.',
} as const
export type EntryRefusalCode = keyof typeof entryRefusalCodes | `gate.${GateId}`
