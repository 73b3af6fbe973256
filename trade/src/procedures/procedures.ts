/** Every procedure and every step there is, in the one order in which they can stand in a plan. */
import { airSpringSteps } from './air-spring.ts'
import { formerSteps } from './former-steps.ts'
import { lowerLegSteps } from './lower-legs.ts'
import type { Procedure, ProcedureStep } from './procedure.ts'

const steps = { ...lowerLegSteps, ...airSpringSteps, ...formerSteps }
export type StepId = keyof typeof steps
/** Steps by name, seen through one type. */
export const procedureSteps: Readonly<Record<StepId, ProcedureStep>> = steps

/** Whether a text names a step. */
export function isStepId(step: string): step is StepId {
  return Object.hasOwn(steps, step)
}

/**
 * The order of a merged plan: what is needed comes before what needs it, and the strip, the work on the lower legs, the
 * work on the spring, the rebuild and the filling each stay together. Checked against needs and gates by a test.
 */
export const stepOrder: readonly StepId[] = [
  'heights-noted',
  'outside-off',
  'lever-open',
  'air-out',
  'preload-off',
  'trapped-check',
  'knob-off',
  'foot-off',
  'lowers-off',
  'seals-out',
  'clean',
  'inspect',
  'cap-off',
  'spacers-noted',
  'circlip-out',
  'shaft-out',
  'bore-inspect',
  'air-seals-new',
  'bore-greased',
  'shaft-in',
  'circlip-in',
  'cap-torque',
  'seals-in',
  'lowers-on',
  'oil-in',
  'foot-torque',
  'travel-air-out',
  'travel-spring-out',
  'fill-quarter',
  'fill-half',
  'fill-target',
  'preload-on',
  'heights-even',
  'lower-clamp-torque',
  'upper-clamp-torque',
]

export type ServiceId = 'lower-legs' | 'air-spring'

/** Off and on again: what every service on the inside of a fork shares. */
const strip = [
  'heights-noted',
  'outside-off',
  'lever-open',
  'air-out',
  'preload-off',
  'trapped-check',
  'knob-off',
  'foot-off',
  'lowers-off',
] as const
const rebuild = [
  'lowers-on',
  'oil-in',
  'foot-torque',
  'travel-air-out',
  'travel-spring-out',
  'fill-quarter',
  'fill-half',
  'fill-target',
  'preload-on',
  'heights-even',
  'lower-clamp-torque',
  'upper-clamp-torque',
] as const

export const procedures: Readonly<Record<ServiceId, Procedure & { steps: readonly StepId[] }>> = {
  'lower-legs': {
    id: 'lower-legs',
    revision: 2,
    kinds: ['fork-air', 'fork-coil'],
    steps: [...strip, 'seals-out', 'clean', 'inspect', 'seals-in', ...rebuild],
  },
  'air-spring': {
    id: 'air-spring',
    revision: 2,
    kinds: ['fork-air'],
    steps: [
      ...strip,
      'cap-off',
      'spacers-noted',
      'circlip-out',
      'shaft-out',
      'bore-inspect',
      'air-seals-new',
      'bore-greased',
      'shaft-in',
      'circlip-in',
      'cap-torque',
      ...rebuild,
    ],
  },
}

export const serviceIds: readonly ServiceId[] = ['lower-legs', 'air-spring']
/** Whether a text names a service that has a procedure. */
export function isServiceId(service: string): service is ServiceId {
  return Object.hasOwn(procedures, service)
}
