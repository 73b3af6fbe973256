/** The procedures as data: complete, in an order that can be worked, and with all that C.1 and C.2 ask for. */
import { describe, expect, it } from 'vitest'
import { type Facts, factsAtTakeIn, putBackItems } from '../gates/facts.ts'
import { changed, unmet } from '../journal/apply-step.ts'
import { type Leg, legs } from '../journal/entry.ts'
import { sheetOfDemo } from '../journal/written-job.ts'
import type { FootFixing, Sheet } from '../sheets/sheet.ts'
import { sayMessage } from '../words/words.ts'
import { cautionOf } from './caution.ts'
import { formerSteps } from './former-steps.ts'
import {
  isStepId,
  procedureSteps,
  procedures,
  type ServiceId,
  type StepId,
  serviceIds,
  stepOrder,
} from './procedures.ts'

const ids = Object.keys(procedureSteps).filter(isStepId)
/** The steps of a service by their names. */
const stepIdsOf = (service: ServiceId): readonly StepId[] => procedures[service].steps.filter(isStepId)
const stepsOf = (service: ServiceId) => stepIdsOf(service).map((id) => procedureSteps[id])

describe('every step', () => {
  it('stands once in the one order, takes minutes, and each procedure is in that order', () => {
    // Steps of former revisions stand in no plan that is made today.
    expect([...stepOrder, ...Object.keys(formerSteps)].sort()).toEqual([...ids].sort())
    for (const id of ids) expect(procedureSteps[id].minutes, id).toBeGreaterThan(0)
    for (const id of serviceIds) {
      const places = stepIdsOf(id).map((step) => stepOrder.indexOf(step))
      expect(
        places.every((place, at) => at === 0 || place > (places[at - 1] ?? 0)),
        id,
      ).toBe(true)
    }
  })

  it('needs nothing that is not so at the start or made by a step before it', () => {
    for (const service of serviceIds) {
      let facts: Facts = { ...factsAtTakeIn(), plan: 'agreed', pressureToFill: 'worked-out' }
      for (const id of stepIdsOf(service)) {
        const step = procedureSteps[id]
        // A coil’s steps stand where air’s do; they are worked on a coil by the tests of plans.
        if (step.only?.spring === 'coil') continue
        for (const leg of step.legs === 'each' ? legs : [null]) {
          expect(unmet(facts, step.needs, leg), `${service}: ${id}`).toBeNull()
          facts = changed(changed(facts, step.spoils ?? {}, leg), step.makes, leg)
        }
      }
    }
  })

  it('that is read or torqued has a figure that says what', () => {
    const silent = ids.filter((id) => procedureSteps[id].records !== null && procedureSteps[id].figure === 'none')
    expect(silent).toEqual([])
  })
})

// Tools, things used up and times are those of the two services' descriptions (common practice, no source).
describe('what is laid out for', () => {
  it.each([
    [
      'lower-legs',
      [
        'torque wrench 2–15 N·m',
        'soft mallet',
        'padded seal lever',
        'seal driver',
        '10–20 ml syringe',
        'measuring cylinder',
        'caliper',
        'loupe',
        'pump',
      ],
      [
        { what: 'wiper', pieces: 2 },
        { what: 'foam-ring', pieces: 2 },
        { what: 'foot-washer', pieces: 1, bySheet: 'washer' },
        { what: 'bath-oil', bySheet: 'bathOil' },
        { what: 'seal-grease', usual: { low: 1, high: 2, measure: 'g' } },
        { what: 'alcohol', usual: { low: 20, high: 40, measure: 'ml' } },
        { what: 'lint-free-cloth' },
      ],
    ],
    [
      'air-spring',
      [
        'cap tool',
        'circlip pliers, straight',
        'plastic pick',
        'bore light',
        'torque wrench 10–40 N·m',
        'pump',
        'core tool',
        'eye protection',
      ],
      [
        { what: 'air-seal-kit', pieces: 1 },
        { what: 'grease', usual: { low: 3, high: 6, measure: 'g' } },
        { what: 'chamber-oil', bySheet: 'chamberOil' },
        { what: 'foot-washer', pieces: 1, bySheet: 'washer' },
        { what: 'folded-cloth' },
      ],
    ],
  ] as const)('%s', (service, tools, consumables) => {
    const all = stepsOf(service)
    expect(all.flatMap((step) => step.tools)).toEqual(expect.arrayContaining([...tools]))
    expect(all.flatMap((step) => step.consumables)).toEqual(expect.arrayContaining([...consumables]))
  })

  it('takes 45 to 75 minutes with seals, and an air spring 25 to 45 on top', () => {
    const sum = (steps: readonly StepId[], sheet: Sheet) =>
      steps.reduce((all, id) => {
        const { only, minutes } = procedureSteps[id]
        const other = (only?.spring && only.spring !== sheet.springKind) || only?.body || only?.compression
        return all + (other ? 0 : minutes)
      }, 0)
    const sheet = sheetOfDemo('U01')
    const lower = stepIdsOf('lower-legs')
    const lowerMinutes = sum(lower, sheet)
    expect(lowerMinutes).toBeGreaterThanOrEqual(45)
    expect(lowerMinutes).toBeLessThanOrEqual(75)
    const onTop = sum(
      stepIdsOf('air-spring').filter((id) => !lower.includes(id)),
      sheet,
    )
    expect(onTop).toBeGreaterThanOrEqual(25)
    expect(onTop).toBeLessThanOrEqual(45)
  })
})

describe('per leg and per fastener', () => {
  it('each leg is drained, filled and torqued by itself', () => {
    expect(ids.filter((id) => procedureSteps[id].legs === 'each')).toEqual([
      'heights-noted',
      'foot-off',
      'oil-in',
      'foot-torque',
    ])
  })

  it('a foot is freed as its fastener asks, each leg by its own', () => {
    const sheet = sheetOfDemo('U01')
    const withFixing = (left: FootFixing, right: FootFixing): Sheet => {
      if (!sheet.legs) throw new Error('a fork')
      return {
        ...sheet,
        legs: { left: { ...sheet.legs.left, fixing: left }, right: { ...sheet.legs.right, fixing: right } },
      }
    }
    const says = (leg: Leg, left: FootFixing, right: FootFixing) =>
      sayMessage(cautionOf('foot-off', withFixing(left, right), leg))
    expect(says('left', 'nut-on-shaft', 'hollow-bolt')).toContain('tap on the nut; never on the bare thread')
    expect(says('right', 'nut-on-shaft', 'hollow-bolt')).toContain('Tap through the bolt')
    expect(says('left', 'captive-bolt', 'bolt-behind-knob')).toContain('No tapping')
    expect(says('right', 'captive-bolt', 'bolt-behind-knob')).toContain('the adjuster rod stays untouched')
    // Where the sheet does not say, the step's own words cover both.
    expect(sayMessage(cautionOf('foot-off', null, 'left'))).toBe(
      'Tap square through the bolt or the nut, never on a bare thread.',
    )
    expect(sayMessage(cautionOf('clean', sheet, null))).toContain('Alcohol away from flame')
  })

  it('a bolt behind the knob waits for the knob, the other fasteners do not', () => {
    expect(procedureSteps['foot-off'].needsBehind).toEqual({ fixing: 'bolt-behind-knob', needs: { knob: ['off'] } })
  })
})

it('a dual crown notes its heights before anything comes off, proves them even and torques its clamps last', () => {
  for (const { steps } of Object.values(procedures)) {
    expect(steps[0]).toBe('heights-noted')
    expect(steps.slice(-3)).toEqual(['heights-even', 'lower-clamp-torque', 'upper-clamp-torque'])
  }
  expect(procedureSteps['heights-even'].needs).toMatchObject({ 'height.*': ['noted'], 'foot.*': ['torqued'] })
  expect(procedureSteps['heights-even'].makesWithin).toBe(0.001)
})

it('what came off goes back before the unit leaves: wheel, axle, caliper, cables, and the brake is tried', () => {
  expect(putBackItems).toEqual(['wheel', 'axle', 'caliper', 'cables', 'brake-holds', 'wheel-free'])
  const after = changed(factsAtTakeIn(), procedureSteps['outside-off'].spoils ?? {}, null)
  for (const item of putBackItems) expect(after[`put-back.${item}`]).toBe('no')
})
