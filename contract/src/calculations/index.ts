/** The one registry of calculations: command line, HTTP, OpenAPI and pages read it. */
import { air } from './air.ts'
import { type Answer, type Calculation, runChecked } from './calculation.ts'
import { springAndLoad } from './spring-and-load.ts'
import { torque } from './torque.ts'

export { type Answer, type Calculation, describeCalculation } from './calculation.ts'

const all: readonly Calculation[] = [...springAndLoad, ...air, ...torque]

export const calculations: Readonly<Record<string, Calculation>> = Object.fromEntries(all.map((one) => [one.name, one]))

/** Runs a calculation by its name. */
export function runCalculation(name: string, input: unknown): Answer {
  const one = Object.hasOwn(calculations, name) ? calculations[name] : undefined
  if (one) return runChecked(one, input)
  const allowed = Object.keys(calculations).join(', ')
  return {
    ok: false,
    errors: [{ field: 'name', code: 'calculation.unknown', came: name, allowed, next: 'Choose one of them.' }],
  }
}
