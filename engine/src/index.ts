/** The physics. SI numbers in, SI numbers out (angles degrees); a wrong input is a `Refusal`, a physical extreme a `limit`. */
export { ambientShift, gaugeElsewhere, type Place, type Shift, type ShiftQuestion } from './air/ambient-shift.ts'
export { type Air, geopotentialAltitude, standardAir } from './air/atmosphere.ts'
export { polytropicPressure } from './air/polytropic.ts'
export { type PumpQuestion, type PumpReading, pumpReading } from './air/pump.ts'
export { type ForkLoad, type ForkLoadQuestion, forkLoad } from './load/fork-load.ts'
export { brent } from './numerics/brent.ts'
export { type FormatOptions, formatQuantity } from './quantities/format.ts'
export { figure, type Kind, type KindName, kinds } from './quantities/kinds.ts'
export { type Dimension, fromSI, type Measure, type MeasureName, measures, toSI } from './quantities/measures.ts'
export { type Parsed, parseQuantity } from './quantities/parse.ts'
export type * from './quantities/si.ts'
export { gravity, standardAtmospherePressure } from './quantities/si.ts'
export { type RefusalCode, refusalCodes } from './refusal/codes.ts'
export { Refusal, type RefusedField, type RefusedValue, refusalSentence } from './refusal/refusal.ts'
export { type PressureForSag, type PressureQuestion, pressureForSag } from './sag/pressure-for-sag.ts'
export { type Sag, type SagQuestion, sag } from './sag/sag.ts'
export { fullStroke } from './spring/dimensions.ts'
export { type PreparedSpring, prepareSpring } from './spring/prepare-spring.ts'
export type {
  AirSpring,
  Bumper,
  CoilSpring,
  Conditions,
  DamperGas,
  LowerAir,
  LowerLeg,
  Negative,
  Process,
  SecondChamber,
  Spring,
  TopOut,
} from './spring/spring.ts'
export { type CurveOptions, type CurvePoint, type SpringCurve, springCurve } from './spring/spring-curve.ts'
export { springState } from './spring/spring-state.ts'
export { type WrenchQuestion, wrenchSetting } from './torque/wrench-setting.ts'
