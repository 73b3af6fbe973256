/** No order of the steps of a service takes less hands-on time than its plan: searched through all states of facts. */
import { describe, expect, it } from 'vitest'
import type { Asked, Traits } from '../gates/asked.ts'
import { type Facts, factsAtTakeIn, snapshotItems } from '../gates/facts.ts'
import { firstShut, rules } from '../gates/rules.ts'
import { traitsOf } from '../gates/traits.ts'
import { factsAfterStep, unmetOn } from '../journal/apply-step.ts'
import { chassisParts, type Leg, type Reading } from '../journal/entry.ts'
import { psi, sheetOfDemo } from '../journal/written-job.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import type { Sheet } from '../sheets/sheet.ts'
import { planSteps } from './plan-steps.ts'

/** After take in, look over, an agreed plan and a pressure worked out. */
function planned(traits: Traits): Facts {
  return {
    ...factsAtTakeIn(),
    ...Object.fromEntries(chassisParts.map((part) => [`chassis.${part}`, 'sound'])),
    ...Object.fromEntries(snapshotItems.map((item) => [`snapshot.${item}`, 'kept'])),
    plan: 'agreed',
    pressureToFill: traits.spring === 'air' ? 'worked-out' : 'unknown',
  }
}

/** What each service is for, written by hand; facts by name and value. */
const goals: Record<string, Partial<Facts>> = {
  'lower-legs': { seals: 'new', cleaned: 'yes', inspected: 'yes' },
  'air-spring': { airSeals: 'new', bore: 'greased', cap: 'shut', circlip: 'in', airShaft: 'in', spacersNoted: 'yes' },
}
const rebuilt: Partial<Facts> = {
  'oil.left': 'filled',
  'oil.right': 'filled',
  'washer.left': 'new',
  'washer.right': 'new',
  'foot.left': 'torqued',
  'foot.right': 'torqued',
  lowers: 'seated',
  travel: 'within',
}

function allowed(facts: Facts, id: string, leg: Leg | null, traits: Traits, sheet: Sheet): boolean {
  if (!isStepId(id)) return false
  const step = procedureSteps[id]
  const measure = step.acts.includes('drains') ? 'm³' : 'm'
  const reading: Reading = { value: 0, measure, instrument: null, how: null }
  const asked: Asked = {
    entry: 'step-done',
    acts: step.acts,
    facts,
    traits,
    leg,
    saidSo: rules.map((rule) => rule.id),
    wrenchSet: 5,
    reading,
    snapshotItem: null,
    fills: step.fills ?? null,
    pressure: null,
    target: 88 * psi,
    maximum: 140 * psi,
    missing: [],
    soaked: { minutes: 7, by: 'station', apart: null },
    leakDown: { act: null, rested: null },
    readBefore: false,
    off: { travel: 0, length: 0, lengthAllowed: 0.002 },
  }
  return unmetOn(facts, step, leg, sheet) === null && firstShut(asked, []) === null
}

/** Dijkstra's least time from the agreed plan to the goal, over every allowed tick; both legs' minutes once. */
function leastMinutes(services: readonly string[], sheet: Sheet): { minutes: number; states: number } {
  const traits = traitsOf(sheet.kind, sheet)
  const goal: Partial<Facts> = {
    ...rebuilt,
    ...(traits.spring === 'air' ? { fill: 'target' } : { preload: 'on' }),
    ...(sheet.body === 'dual-crown' ? { clamps: 'torqued' } : {}),
    knob: 'on',
    ...Object.assign({}, ...services.map((service) => goals[service])),
  }
  const reached = (facts: Facts): boolean =>
    Object.entries(goal).every(([name, value]) => facts[name as keyof Facts] === value) // the goal's names are facts
  const ticks = planSteps(services, sheet).flatMap((step) => (step.legs ?? [null]).map((leg) => ({ ...step, leg })))
  const keyOf = (facts: Facts) => Object.values(facts).join()
  const start = planned(traits)
  const best = new Map<string, number>([[keyOf(start), 0]])
  const byMinutes: Facts[][] = [[start]]
  const done = new Set<string>()
  for (let minutes = 0; minutes < byMinutes.length; minutes++)
    for (const facts of byMinutes[minutes] ?? []) {
      const key = keyOf(facts)
      if (done.has(key) || best.get(key) !== minutes) continue
      done.add(key)
      if (reached(facts) && start !== facts) return { minutes: minutes / 2, states: done.size }
      for (const { step: id, leg, minutes: own } of ticks) {
        if (!isStepId(id) || !allowed(facts, id, leg, traits, sheet)) continue
        const after = factsAfterStep(facts, procedureSteps[id], leg, { washerNew: true, travelOff: 0 })
        const next = keyOf(after)
        // Halves of minutes, so that a leg's tick is a whole number.
        const then = minutes + (leg ? own : own * 2)
        if (then >= (best.get(next) ?? Number.POSITIVE_INFINITY)) continue
        best.set(next, then)
        byMinutes[then] = [...(byMinutes[then] ?? []), after]
      }
    }
  throw new Error('the goal is out of reach')
}

const withCap = (sheet: Sheet): Sheet => ({
  ...sheet,
  spring: { ...sheet.spring, capTorque: { value: 25, source: sheet.stroke.source } },
})

describe('the plan is the shortest that reaches what its services are for', () => {
  it.each([
    ['U01', ['lower-legs']],
    ['U01', ['air-spring']],
    ['U01', ['lower-legs', 'air-spring']],
    ['U03', ['lower-legs']],
    ['U07', ['lower-legs']],
    ['U07', ['lower-legs', 'air-spring']],
    ['U08', ['lower-legs']],
    ['U09', ['lower-legs', 'air-spring']],
  ])(
    '%s, %s',
    (key, services) => {
      const sheet = withCap(sheetOfDemo(key))
      const { minutes, states } = leastMinutes(services, sheet)
      const own = planSteps(services, sheet).reduce((sum, step) => sum + step.minutes, 0)
      expect(states).toBeGreaterThan(20)
      expect(own).toBe(minutes)
    },
    60_000,
  )
})
