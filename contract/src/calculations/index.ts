/** The one registry of calculations: command line, HTTP, OpenAPI and pages read it. */
import type { DoubtProgress } from '@legwork/engine'
import { air } from './air.ts'
import { type Answer, type Calculation, runChecked } from './calculation.ts'
import { coils } from './coils.ts'
import { dampings } from './damping.ts'
import { dampingOil } from './damping-oil.ts'
import { type DoubtInSteps, type DoubtWatch, doubtOver, doubtStepsOver } from './doubt.ts'
import { faults } from './faults.ts'
import { hoursRidden } from './hours.ts'
import { leak } from './leak.ts'
import { lives } from './life.ts'
import { loads } from './loads.ts'
import { oil } from './oil.ts'
import { press } from './press.ts'
import { setUp } from './set-up.ts'
import { springAndLoad } from './spring-and-load.ts'
import { threads } from './threads.ts'
import { torque } from './torque.ts'
import { wear } from './wear.ts'

export {
  type Answer,
  answerSchema,
  type Calculation,
  calculationTold,
  describeCalculation,
  type Group,
  groups,
} from './calculation.ts'
export type { DoubtWatch } from './doubt.ts'
export { at, doubtsIn, plain, stepsOf } from './doubtful-input.ts'
export type { SchemaPart } from './units-of.ts'

const all: readonly Calculation[] = [
  ...springAndLoad,
  ...setUp,
  ...coils,
  ...loads,
  ...air,
  ...leak,
  ...torque,
  ...threads,
  ...oil,
  ...dampings,
  ...dampingOil,
  ...wear,
  ...press,
  ...hoursRidden,
  ...lives,
  ...faults,
]

const byName: Readonly<Record<string, Calculation>> = Object.fromEntries(all.map((one) => [one.name, one]))

const doubt = doubtOver(byName)

export const calculations: Readonly<Record<string, Calculation>> = { ...byName, doubt }

/** The calculation `doubt` in steps, for where it must not hold everything else up: yields how far it is. */
export function doubtInSteps(input: unknown): Generator<DoubtProgress, DoubtInSteps, void> {
  return doubtStepsOver(byName, doubt, input)
}

/** Runs a calculation by its name. */
export function runCalculation(name: string, input: unknown): Answer {
  const one = Object.hasOwn(calculations, name) ? calculations[name] : undefined
  if (one) return runChecked(one, input)
  const allowed = Object.keys(calculations).join(', ')
  return {
    ok: false,
    errors: [{ field: 'name', code: 'unknown-calculation', came: name, allowed, next: 'Choose one of them.' }],
  }
}

/** The calculation `doubt`, watched: it takes seconds where what it carries doubt through takes long. */
export function runDoubt(input: unknown, watch: DoubtWatch): Answer {
  const steps = doubtInSteps(input)
  for (let step = steps.next(); ; step = steps.next()) {
    if (!step.done) {
      watch.progress(step.value.drawn, step.value.draws)
      continue
    }
    for (const [output, numbers] of Object.entries(step.value.drawn)) watch.drawn(output, [...numbers])
    return step.value.answer
  }
}
