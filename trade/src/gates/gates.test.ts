import { readFileSync, writeFileSync } from 'node:fs'
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
import { gatesPage, rowsOf } from './gates-page.ts'
import { isWaivable, rules, saidSoFor } from './rules.ts'
import { whatStepsDo } from './what-steps-do.ts'

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
  return (
    stepOrder
      .filter((id) => wanted.has(id) && id !== 'inspect' && id !== 'knob-off')
      // Nothing asks about one leg's height alone: both are noted with one tick here.
      .map((id) => ({
        id,
        step: id === 'heights-noted' ? { ...procedureSteps[id], legs: 'once' as const } : procedureSteps[id],
      }))
      .filter(({ step: { only } }) => {
        if (only?.spring && only.spring !== traits.spring) return false
        if (only?.compression && !traits.compression) return false
        return !(only?.body && !dual)
      })
  )
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
    { id: 'feet-torqued', step: act(['torques'], { 'foot.*': 'torqued' }) },
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
const without = (...left: readonly string[]) => ({ steps: airFork.steps.filter(({ id }) => !left.includes(id)) })
/** What is kept as it came in is searched on the single crown. */
const dualTraits: Traits = { ...lever, snapshot: [] }
const dual = (services: readonly ServiceId[], left: readonly StepId[] = []): Bench => {
  const steps = stepsOf(services, dualTraits, true).filter(({ id }) => !left.some((one) => one === id))
  return bench(services, dualTraits, { apart, steps })
}
/** Searched with each service alone; no other step looks at what they make, see the test. */
const ofClamps = ['heights-noted', 'heights-even', 'lower-clamp-torque', 'upper-clamp-torque'] as const

/** Every kind that a procedure is written for, with every service it has, and what changes the way through. */
const benches: readonly (readonly [name: string, on: Bench])[] = [
  ['air fork: lower legs', airFork],
  ['air fork: air spring', bench(['air-spring'], air, { apart })],
  ['air fork: lower legs and air spring', bench(['lower-legs', 'air-spring'], air, { apart })],
  ['air fork that came alone: lower legs', bench(['lower-legs'], air, { bike: false, ...without('outside-off') })],
  ['air fork, no maximum on its sheet: lower legs', bench(['lower-legs'], air, { maximumKnown: false, apart })],
  ['dual-crown air fork with a lever: lower legs', dual(['lower-legs'])],
  ['dual-crown air fork with a lever: air spring', dual(['air-spring'])],
  ['dual-crown air fork with a lever, its clamps apart: both services', dual(['lower-legs', 'air-spring'], ofClamps)],
  ['coil fork: lower legs', coilFork],
  ['small procedure: a damper opened', damper],
  ['small procedure: a gas reservoir', reservoir],
]
const kindRows: { name: string; states: number }[] = []
const gateRows: { id: GateId; states: number; sequence: readonly string[] }[] = []

describe('no sequence that must not happen is reachable through the gates', () => {
  it('and every kind with a procedure is searched with every service it has', () => {
    const kinds = new Set(Object.values(procedures).flatMap((procedure) => procedure.kinds))
    expect([...kinds].sort()).toEqual(['fork-air', 'fork-coil'])
    // A coil fork has no air spring: two services on the air fork, alone and together, one on the coil fork.
    expect(procedures['air-spring'].kinds).toEqual(['fork-air'])
    expect(Object.keys(procedures)).toHaveLength(2)
  })

  it.each(benches)(
    '%s',
    (name, on) => {
      const found = searchForbidden(on, rules)
      expect(found).toMatchObject({ sequence: null, breaks: null })
      kindRows.push({ name, states: found.states })
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

it('no other step needs or spoils what the clamps of a second crown make', () => {
  const others = stepOrder.filter((id) => !ofClamps.some((one) => one === id)).map((id) => procedureSteps[id])
  const touched = others.flatMap(({ needs, makes, spoils }) => Object.keys({ ...needs, ...makes, ...spoils }))
  for (const id of ofClamps)
    for (const fact of Object.keys(procedureSteps[id].makes)) expect(touched, id).not.toContain(fact)
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
      gateRows.push({ id, states: found.states, sequence: found.sequence ?? [] })
    },
    60_000,
  )

  it('are 27, and the rows are printed and stand in docs/gates.md', () => {
    expect(gateRows.map((row) => row.id)).toEqual(Array.from({ length: 27 }, (_, index) => `R${index + 1}`))
    const page = gatesPage(kindRows, gateRows)
    process.stdout.write(`${rowsOf(page).join('\n')}\n`)
    const file = new URL('../../../docs/gates.md', import.meta.url)
    if (process.env.LEGWORK_WRITE_DOCS === '1') writeFileSync(file, page)
    // Written anew with: LEGWORK_WRITE_DOCS=1 npx vitest run --project unit trade/src/gates/gates.test.ts
    expect(rowsOf(readFileSync(file, 'utf8'))).toEqual(rowsOf(page))
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
    // Face and hands out of the line of caps.
    expect(saidSoFor(procedureSteps['cap-off'].acts)).toEqual(['R5'])
  })

  it('and the yardstick names every step by hand, none but those that there are and those of the small procedures', () => {
    const named = new Set(Object.values(whatStepsDo).flatMap((ids) => [...ids]))
    const small = new Set([...damper.steps, ...reservoir.steps].map(({ id }) => id))
    expect([...named].filter((id) => !isStepId(id) && !small.has(id))).toEqual([])
    const silent = stepOrder.filter((id) => procedureSteps[id].acts.length > 0 && !named.has(id))
    // It goes on by what is not done with them: R13 and R14 look at where the lower legs are.
    expect(silent).toEqual(['lowers-on'])
  })
})
