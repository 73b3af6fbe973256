import { describe, expect, it } from 'vitest'
import type { GateId } from '../journal/entry.ts'
import type { ProcedureStep } from '../procedures/procedure.ts'
import {
  isStepId,
  procedureSteps,
  procedures,
  type ServiceId,
  type StepId,
  stepOrder,
} from '../procedures/procedures.ts'
import type { Traits } from './asked.ts'
import { type Bench, searchForbidden } from './forbidden-search.ts'
import { isWaivable, rules, saidSoFor } from './rules.ts'

// Fewer parts of one sort than a real unit has: one part of the chassis, two of the snapshot, one to put back.
const air: Traits = {
  spring: 'air',
  parts: ['crown'],
  snapshot: ['length', 'pressure'],
  putBack: ['wheel'],
  compression: false,
}
const coil: Traits = { ...air, spring: 'coil', snapshot: ['length'] }

/** The steps of services on a kind; those that no gate and no need looks at are left out. */
function stepsOf(services: readonly ServiceId[], traits: Traits, dual = false): Bench['steps'] {
  const wanted = new Set<StepId>(services.flatMap((service) => procedures[service].steps))
  return stepOrder
    .filter((id) => wanted.has(id) && id !== 'inspect' && id !== 'knob-off')
    .map((id) => ({ id, step: procedureSteps[id] }))
    .filter(({ step: { only } }) => {
      if (only?.spring && only.spring !== traits.spring) return false
      if (only?.compression && !traits.compression) return false
      return !(only?.body && !dual)
    })
}

const bench = (services: readonly ServiceId[], traits: Traits, other: Partial<Bench> = {}): Bench => ({
  traits,
  steps: stepsOf(services, traits),
  maximumKnown: true,
  bike: true,
  ...other,
})

const act = (acts: ProcedureStep['acts'], makes: ProcedureStep['makes'] = {}): ProcedureStep => ({
  legs: 'once',
  acts,
  needs: {},
  makes,
  tools: [],
  consumables: [],
  figure: 'none',
  records: null,
  minutes: 1,
})
/** Small procedures for the gates whose own procedures are not written yet: a damper opened, a gas reservoir. */
const damper: Bench = {
  traits: { ...air, snapshot: ['length'] },
  steps: [
    { id: 'damper-off', step: act(['strips-damper'], { damper: 'open' }) },
    { id: 'damper-bled', step: act([], { damper: 'closed' }) },
    { id: 'air-out', step: procedureSteps['air-out'] },
    { id: 'travel-air-out', step: { ...procedureSteps['travel-air-out'], acts: ['cycles'], needs: {} } },
    { id: 'fill-quarter', step: procedureSteps['fill-quarter'] },
    { id: 'foot-torque', step: act(['torques'], { 'foot.*': 'torqued' }) },
  ],
  maximumKnown: true,
  bike: false,
}
const reservoir: Bench = {
  traits: { ...coil, parts: ['crown'], snapshot: [], putBack: [] },
  steps: [
    { id: 'gas-out', step: act([], { gas: 'released' }) },
    { id: 'reservoir-open', step: act(['opens-gas'], { inspected: 'yes' }) },
    { id: 'gas-in', step: act([], { gas: 'charged' }) },
    { id: 'damper-cycled', step: act(['cycles-gas-damper'], { cleaned: 'yes' }) },
  ],
  maximumKnown: true,
  bike: false,
}

const airFork = bench(['lower-legs'], air)
const lever: Traits = { ...air, compression: true, snapshot: ['length'] }
const withLever = bench(['lower-legs'], lever)
const coilFork = bench(['lower-legs'], coil)
const elsewhere: Partial<Record<GateId, Bench>> = {
  R6: reservoir,
  R7: withLever,
  R18: damper,
  R19: reservoir,
  R20: coilFork,
}

/** What only the leaving asks about; no step of the air spring touches it, see the test. */
const apart: readonly GateId[] = ['R22', 'R23', 'R25']
const rows: string[] = []

describe('no sequence that must not happen is reachable through the gates', () => {
  it.each([
    ['lower legs, air fork', airFork],
    [
      'lower legs, air fork that came alone',
      bench(['lower-legs'], air, { bike: false, steps: airFork.steps.filter(({ id }) => id !== 'outside-off') }),
    ],
    ['lower legs, air fork without a maximum on its sheet', bench(['lower-legs'], air, { maximumKnown: false })],
    ['air spring, air fork', bench(['air-spring'], air, { apart })],
    ['lower legs and air spring, air fork', bench(['lower-legs', 'air-spring'], air, { apart })],
    [
      'lower legs, dual-crown air fork with a lever',
      bench(['lower-legs'], lever, { apart, steps: stepsOf(['lower-legs'], lever, true) }),
    ],
    ['lower legs, coil fork', coilFork],
    ['damper opened', damper],
    ['gas reservoir', reservoir],
  ])(
    '%s',
    (name, on) => {
      const found = searchForbidden(on, rules)
      expect(found).toMatchObject({ sequence: null, breaks: null })
      rows.push(`${name}: ${found.states} states, none forbidden`)
    },
    240_000,
  )
})

it('no step of the air spring makes or spoils what its search leaves apart', () => {
  const shared = new Set<string>(procedures['lower-legs'].steps)
  const own = procedures['air-spring'].steps.filter(isStepId).filter((id) => !shared.has(id))
  const touched = own.flatMap((id) => Object.keys({ ...procedureSteps[id].makes, ...procedureSteps[id].spoils }))
  expect(own).toHaveLength(10)
  for (const fact of ['leakDown', 'setting', 'put-back.*', 'brake', 'springSide']) expect(touched).not.toContain(fact)
})

describe('each gate is needed: without it alone, the search finds what it is there for', () => {
  it.each(rules.map((rule) => rule.id))(
    '%s',
    (id) => {
      const found = searchForbidden(
        elsewhere[id] ?? airFork,
        rules.filter((rule) => rule.id !== id),
      )
      expect(found.breaks).toBe(id)
      rows.push(`without ${id}: ${found.states} states, then ${found.sequence?.join(', ')}`)
    },
    60_000,
  )

  it('are 27, and the rows are these', () => {
    expect(rules.map((rule) => rule.id)).toEqual(Array.from({ length: 27 }, (_, index) => `R${index + 1}`))
    process.stdout.write(`${rows.join('\n')}\n`)
  })
})

describe('the table of gates', () => {
  it('has no way round the ten, nothing to waive where somebody only says so, and waivers for the rest', () => {
    const hard = rules.filter((rule) => rule.noWayRound).map((rule) => rule.id)
    expect(hard).toEqual(['R1', 'R3', 'R4', 'R6', 'R16', 'R19', 'R20', 'R24', 'R25', 'R27'])
    for (const id of [...hard, 'R5', 'R8', 'R11'] as GateId[]) expect(isWaivable(id), id).toBe(false)
    for (const id of ['R2', 'R7', 'R9', 'R10', 'R15', 'R17', 'R22', 'R23', 'R26'] as GateId[])
      expect(isWaivable(id), id).toBe(true)
  })

  it('knows what has to be said with a tick', () => {
    expect(saidSoFor(procedureSteps['foot-off'].acts)).toEqual(['R8'])
    expect(saidSoFor(procedureSteps['foot-torque'].acts)).toEqual(['R15'])
    expect(saidSoFor(procedureSteps['circlip-out'].acts)).toEqual(['R5'])
  })
})
