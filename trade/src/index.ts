export { storyTime } from './demo/calendar.ts'
export { type DemoJob, demoJobs } from './demo/jobs.ts'
export { demoPeople, demoRiders, demoWorkshopName } from './demo/people.ts'
export { demoDimensions, demoSheet } from './demo/sheets.ts'
export { type DemoUnit, demoUnits } from './demo/units.ts'
export * from './due/due-from.ts'
export * from './due/due-range.ts'
export * from './due/intervals.ts'
export * from './gates/facts.ts'
export { firstShut, isWaivable, ruleOf, rules, saidSoFor } from './gates/rules.ts'
export { traitsOf } from './gates/traits.ts'
export { checkEntry } from './journal/check-entry.ts'
export * from './journal/entry.ts'
export * from './journal/job-state.ts'
export { newId } from './journal/new-id.ts'
export { reduceJob } from './journal/reduce-job.ts'
export { type EntryRefusalCode, entryRefusalCodes } from './journal/refusal-codes.ts'
export * from './limits/bench-limits.ts'
export * from './limits/drained-oil.ts'
export * from './limits/instrument-doubt.ts'
export * from './limits/judge.ts'
export * from './limits/usual.ts'
export { planSteps, servicesFor } from './planning/plan-steps.ts'
export * from './procedures/procedure.ts'
export {
  isServiceId,
  isStepId,
  procedureSteps,
  procedures,
  type ServiceId,
  type StepId,
  serviceIds,
} from './procedures/procedures.ts'
export * from './registers.ts'
export * from './sheets/assumed.ts'
export { checkSheet, readSheet, type SheetCheck } from './sheets/check-sheet.ts'
export { emptyLeg, type GenericSize, genericSheet, genericSizesFor } from './sheets/generic-sheet.ts'
export { type NeededValue, neededValues } from './sheets/needed-values.ts'
export * from './sheets/sheet.ts'
export { springOf } from './sheets/spring-of.ts'
export * from './words/words.ts'
