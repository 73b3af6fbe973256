/** Steps of former revisions: plans that were agreed with them are worked to their end as they stand. */
import type { ProcedureStep } from './procedure.ts'

export const formerSteps = {
  'clamps-noted': {
    legs: 'once',
    only: { body: 'dual-crown' },
    acts: [],
    needs: {},
    makes: { clamps: 'noted' },
    tools: ['caliper', 'torque wrench'],
    consumables: [],
    figure: 'stanchion-height',
    records: 'reading',
    minutes: 3,
  },
  'clamps-torque': {
    legs: 'once',
    only: { body: 'dual-crown' },
    acts: ['torques'],
    needs: { clamps: ['noted'], 'foot.*': ['torqued'] },
    makes: { clamps: 'torqued' },
    tools: ['torque wrench 2–15 N·m', 'caliper'],
    consumables: [],
    figure: 'upper-clamp-torque',
    records: 'wrench',
    minutes: 6,
  },
} as const satisfies Record<string, ProcedureStep>
