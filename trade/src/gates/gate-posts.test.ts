import { expect, test } from 'vitest'
import { sheetOfDemo } from '../journal/written-job.ts'
import { planSteps } from '../planning/plan-steps.ts'
import { gatePosts } from './gate-posts.ts'

const postsOf = (services: readonly string[], unit: string) => {
  const sheet = sheetOfDemo(unit)
  const steps = planSteps(services, sheet)
  return gatePosts(steps, sheet.kind, sheet).map(({ after, gate }) => [steps[after - 1]?.step, gate])
}

// By hand from the ordering rules (common practice, no source): air out before a fastener (R3), nothing trapped before it
// (R4), both feet torqued before air or spring (R16), preload off before a coil's retainer (R20).
test.each([
  [
    'lower-legs',
    'U01',
    [
      ['air-out', 'R3'],
      ['trapped-check', 'R4'],
      ['foot-torque', 'R16'],
    ],
  ],
  [
    'lower-legs',
    'U08',
    [
      ['preload-off', 'R20'],
      ['foot-torque', 'R16'],
    ],
  ],
])('%s on %s', (service, unit, posts) => {
  expect(postsOf([service], unit)).toEqual(posts)
})
