import { Refusal } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { sheetOfDemo, WrittenJob } from '../journal/written-job.ts'
import type { Sheet } from '../sheets/sheet.ts'
import { planSteps, servicesFor } from './plan-steps.ts'

const ids = (services: readonly string[], sheet: Sheet, options = {}) =>
  planSteps(services, sheet, options).map((step) => step.step)

/** Torque of the air cap, which the demo sheets leave empty. */
const withCap = (sheet: Sheet): Sheet => ({
  ...sheet,
  spring: { ...sheet.spring, capTorque: { value: 25, source: sheet.stroke.source } },
})

// Sequences below are written by hand after the procedures (common practice, no source).
const lowerLegs = [
  'outside-off',
  'air-out',
  'trapped-check',
  'knob-off',
  'foot-off',
  'lowers-off',
  'seals-out',
  'clean',
  'inspect',
  'seals-in',
  'lowers-on',
  'oil-in',
  'foot-torque',
  'travel-air-out',
  'fill-quarter',
  'fill-half',
  'fill-target',
]
const airSpring = [
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
]

describe('plans', () => {
  it('the lower legs of a single-crown air fork: 17 steps, 60 minutes', () => {
    const steps = planSteps(['lower-legs'], sheetOfDemo('U01'))
    expect(steps.map((step) => step.step)).toEqual(lowerLegs)
    expect(steps.reduce((sum, step) => sum + step.minutes, 0)).toBe(60) // quoted for the demo job J02
    expect(steps.filter((step) => step.legs).map((step) => step.step)).toEqual(['foot-off', 'oil-in', 'foot-torque'])
  })

  it('with a compression adjuster it is opened before the damper is cycled', () => {
    expect(ids(['lower-legs'], sheetOfDemo('U03'))).toEqual(['outside-off', 'lever-open', ...lowerLegs.slice(1)])
  })

  it('a dual crown notes its clamps first and torques them last', () => {
    expect(ids(['lower-legs'], sheetOfDemo('U07'))).toEqual([
      'heights-noted',
      'outside-off',
      'lever-open',
      ...lowerLegs.slice(1),
      'heights-even',
      'lower-clamp-torque',
      'upper-clamp-torque',
    ])
  })

  it('a coil fork has preload in place of air', () => {
    expect(ids(['lower-legs'], sheetOfDemo('U08'))).toEqual([
      'outside-off',
      'preload-off',
      ...lowerLegs.slice(3, 13),
      'travel-spring-out',
      'preload-on',
    ])
  })

  it('the air spring alone leaves the wipers', () => {
    expect(ids(['air-spring'], sheetOfDemo('U01'))).toEqual([
      ...lowerLegs.slice(0, 6),
      ...airSpring,
      ...lowerLegs.slice(10),
    ])
  })

  it('both together do everything once', () => {
    const both = [...lowerLegs.slice(0, 9), ...airSpring, ...lowerLegs.slice(9)]
    expect(ids(['lower-legs', 'air-spring'], sheetOfDemo('U01'))).toEqual(both)
    expect(ids(['air-spring', 'lower-legs'], sheetOfDemo('U01'))).toEqual(both)
    expect(new Set(both).size).toBe(both.length)
  })

  it('a fork that came alone has nothing to take off, one without a knob no knob', () => {
    expect(ids(['lower-legs'], sheetOfDemo('U01'), { alone: true })).toEqual(lowerLegs.slice(1))
    const sheet = sheetOfDemo('U01')
    const { legs } = sheet
    if (!legs) throw new Error('a fork')
    const noKnob = { ...sheet, legs: { left: legs.left, right: { ...legs.right, fixing: 'hollow-bolt' as const } } }
    expect(ids(['lower-legs'], noKnob)).toEqual(lowerLegs.filter((step) => step !== 'knob-off'))
  })

  it('are workable in their order through every gate, on every sheet they are for', () => {
    for (const key of ['U01', 'U03', 'U07', 'U08', 'U16'])
      for (const services of [['lower-legs'], ['air-spring'], ['lower-legs', 'air-spring']]) {
        const sheet = withCap(sheetOfDemo(key))
        if (!services.every((service) => servicesFor(sheet).some((one) => one === service))) continue
        const job = new WrittenJob(sheet).ready(services).workUntil()
        expect(job.state.chapters.work.state, `${key} ${services}`).toBe('done')
        expect(job.state.contested).toEqual([])
      }
  })

  it('refuse what has no procedure, by name', () => {
    expect(() => planSteps(['lower-legs'], sheetOfDemo('U10'))).toThrow(Refusal)
    expect(() => planSteps(['air-spring'], sheetOfDemo('U08'))).toThrow(/air-spring/)
    expect(() => planSteps([], sheetOfDemo('U01'))).toThrow(/services is none/)
    expect(servicesFor(sheetOfDemo('U08'))).toEqual(['lower-legs'])
    expect(servicesFor(sheetOfDemo('U12'))).toEqual([])
  })
})
