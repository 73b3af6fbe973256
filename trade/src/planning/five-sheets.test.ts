/**
 * Lower legs, air spring and both on five sheets, against sequences written by hand after the two services' descriptions
 * (common practice, no source). A sheet differs by what has to come off: knob, lever, second crown, coil, or nothing.
 */
import { describe, expect, it } from 'vitest'
import { sheetOfDemo } from '../journal/written-job.ts'
import type { FootFixing, Sheet } from '../sheets/sheet.ts'
import { planSteps } from './plan-steps.ts'

/** A list as it is written on paper. */
const list = (text: string): readonly string[] => text.trim().split(/\s+/)

function fastened(sheet: Sheet, fixing: FootFixing): Sheet {
  if (!sheet.legs) throw new Error('a fork')
  return { ...sheet, legs: { left: { ...sheet.legs.left, fixing }, right: { ...sheet.legs.right, fixing } } }
}

interface Planned {
  what: string
  sheet: Sheet
  lowerLegs: readonly string[]
  airSpring: readonly string[] | null
  both: readonly string[] | null
}

const sheets: readonly Planned[] = [
  {
    what: 'U01: single crown, a bolt behind the knob',
    sheet: sheetOfDemo('U01'),
    lowerLegs: list(`outside-off air-out trapped-check knob-off foot-off lowers-off
      seals-out clean inspect seals-in
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
    airSpring: list(`outside-off air-out trapped-check knob-off foot-off lowers-off
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
    both: list(`outside-off air-out trapped-check knob-off foot-off lowers-off
      seals-out clean inspect
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      seals-in lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
  },
  {
    what: 'U03: single crown with a compression adjuster',
    sheet: sheetOfDemo('U03'),
    lowerLegs: list(`outside-off lever-open air-out trapped-check knob-off foot-off lowers-off
      seals-out clean inspect seals-in
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
    airSpring: list(`outside-off lever-open air-out trapped-check knob-off foot-off lowers-off
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
    both: list(`outside-off lever-open air-out trapped-check knob-off foot-off lowers-off
      seals-out clean inspect
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      seals-in lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
  },
  {
    what: 'U07: dual crown with a compression adjuster',
    sheet: sheetOfDemo('U07'),
    lowerLegs: list(`heights-noted outside-off lever-open air-out trapped-check knob-off foot-off lowers-off
      seals-out clean inspect seals-in
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target
      heights-even lower-clamp-torque upper-clamp-torque`),
    airSpring: list(`heights-noted outside-off lever-open air-out trapped-check knob-off foot-off lowers-off
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target
      heights-even lower-clamp-torque upper-clamp-torque`),
    both: list(`heights-noted outside-off lever-open air-out trapped-check knob-off foot-off lowers-off
      seals-out clean inspect
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      seals-in lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target
      heights-even lower-clamp-torque upper-clamp-torque`),
  },
  {
    what: 'U09 with nuts on both shafts: no knob in the way',
    sheet: fastened(sheetOfDemo('U09'), 'nut-on-shaft'),
    lowerLegs: list(`outside-off air-out trapped-check foot-off lowers-off
      seals-out clean inspect seals-in
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
    airSpring: list(`outside-off air-out trapped-check foot-off lowers-off
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
    both: list(`outside-off air-out trapped-check foot-off lowers-off
      seals-out clean inspect
      cap-off spacers-noted circlip-out shaft-out bore-inspect air-seals-new bore-greased shaft-in circlip-in cap-torque
      seals-in lowers-on oil-in foot-torque travel-air-out fill-quarter fill-half fill-target`),
  },
  {
    what: 'U08: a coil, which has no air spring',
    sheet: sheetOfDemo('U08'),
    lowerLegs: list(`outside-off preload-off knob-off foot-off lowers-off
      seals-out clean inspect seals-in
      lowers-on oil-in foot-torque travel-spring-out preload-on`),
    airSpring: null,
    both: null,
  },
]

describe.each(sheets)('$what', ({ sheet, lowerLegs, airSpring, both }) => {
  it.each([
    [['lower-legs'], lowerLegs],
    [['air-spring'], airSpring],
    [['lower-legs', 'air-spring'], both],
  ] as const)('%s', (services, wanted) => {
    if (wanted === null) {
      expect(() => planSteps(services, sheet)).toThrow(/air-spring/)
      return
    }
    const steps = planSteps(services, sheet).map((step) => step.step)
    expect(steps).toEqual(wanted)
    expect(new Set(steps).size).toBe(steps.length)
  })
})
