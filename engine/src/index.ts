/** The physics. SI numbers in, SI numbers out (angles degrees); a wrong input is a `Refusal`, a physical extreme a `limit`. */
export {
  ambientShift,
  gaugeElsewhere,
  type Place,
  type Shift,
  type ShiftQuestion,
  springElsewhere,
} from './air/ambient-shift.ts'
export { type Air, geopotentialAltitude, standardAir } from './air/atmosphere.ts'
export { type HoseQuestion, type HoseRatio, hoseRatio } from './air/hose-ratio.ts'
export { idealGasBound } from './air/ideal-gas-bound.ts'
export { polytropicPressure } from './air/polytropic.ts'
export { type PumpQuestion, type PumpReading, pumpReading } from './air/pump.ts'
export { coolingTimes, type HoldFriction, type HoldQuestion, holdFriction } from './bench-test/hold-friction.ts'
export { type LeakDown, type LeakQuestion, leakDown } from './bench-test/leak-down.ts'
export type { PressFit } from './bench-test/press-fit.ts'
export { type HypothesisName, type PressFault, supposedSpring } from './bench-test/press-hypothesis.ts'
export { type Press, type PressQuestion, type PressReading, sheetDoubt } from './bench-test/press-question.ts'
export { type PressHypothesis, type PressTest, pressFits, pressTest } from './bench-test/press-test.ts'
export { type CoilRateQuestion, coilRate } from './coil/coil-rate.ts'
export { type WireQuestion, wireRate } from './coil/wire-rate.ts'
export {
  type ClickSetting,
  type ClicksForDamping,
  type ClicksQuestion,
  clicksForDamping,
} from './damping/clicks-for-damping.ts'
export {
  type DampingThere,
  dampingAtTemperature,
  type OilKnown,
  type TemperatureQuestion,
} from './damping/damping-at-temperature.ts'
export { type DampingFromReturn, dampingFromReturn, type FromReturnQuestion } from './damping/damping-from-return.ts'
export { type DampingRatio, dampingRatio, type RatioQuestion } from './damping/damping-ratio.ts'
export { type Drop, type DropMoment, type DropQuestion, drop } from './damping/drop.ts'
export { type ReturnMotion, type ReturnQuestion, returnTime } from './damping/return-time.ts'
export {
  type DoubtedOutput,
  type DoubtProgress,
  type DoubtResult,
  type DoubtStudy,
  doubtAtOnce,
  doubtInSteps,
} from './doubt/doubt-in-steps.ts'
export type { Doubtful } from './doubt/doubtful.ts'
export type { Spread } from './doubt/spread.ts'
export { type DiagnoseQuestion, type Diagnosis, diagnose, type RankedFault } from './faults/diagnose.ts'
export type { FaultCause, FaultNetwork, FaultPair, FaultSign, FaultTest } from './faults/network.ts'
export type { NextTest } from './faults/next-tests.ts'
export { type DueDates, type DueQuestion, due, dueDates, dueDraws } from './life/due.ts'
export type { Survival } from './life/kaplan-meier.ts'
export { type LifeAnswer, type LifeQuestion, life } from './life/life.ts'
export type { Life } from './life/lives.ts'
export { type Ride, type WearHours, wearHours } from './life/wear-hours.ts'
export { type ForkLoad, type ForkLoadQuestion, forkLoad } from './load/fork-load.ts'
export type { Leverage } from './load/leverage.ts'
export { type ShockLoadQuestion, shockLoad } from './load/shock-load.ts'
export { type SideFrictionQuestion, sideFriction } from './load/side-friction.ts'
export { type Draws, normalDraw, seededDraws } from './numerics/random.ts'
export {
  type BlendMethod,
  type BlendQuestion,
  blend,
  type ResidualQuestion,
  residualOil,
} from './oil/blend.ts'
export { type OilHeight, type OilHeightQuestion, oilHeight } from './oil/oil-height.ts'
export { type SayboltQuestion, saybolt } from './oil/saybolt.ts'
export { type OilViscosity, type ViscosityQuestion, viscosity } from './oil/viscosity.ts'
export type { ViscosityPoint } from './oil/viscosity-temperature.ts'
export { type FormatOptions, formatQuantity } from './quantities/format.ts'
export { figure, type Kind, type KindName, kinds } from './quantities/kinds.ts'
export { type Dimension, fromSI, type Measure, type MeasureName, measures, toSI } from './quantities/measures.ts'
export { type Parsed, parseQuantity } from './quantities/parse.ts'
export type * from './quantities/si.ts'
export { gravity, standardAtmospherePressure } from './quantities/si.ts'
export { type RefusalCode, refusalCodes } from './refusal/codes.ts'
export { Refusal, type RefusedField, type RefusedValue, refusalSentence } from './refusal/refusal.ts'
export { type MovingTime, movingTime, type TrackPoint, type TrackRules } from './ride/moving-time.ts'
export { type BothEnds, type BothEndsQuestion, bothEnds, type End } from './sag/both-ends.ts'
export { type CalibrateQuestion, type Calibration, calibrate, type MeasuredPoint } from './sag/calibrate.ts'
export { type PressureForSag, type PressureQuestion, pressureForSag } from './sag/pressure-for-sag.ts'
export { type Sag, type SagQuestion, sag } from './sag/sag.ts'
export { type SpacersForEndForce, type SpacersQuestion, spacersForEndForce } from './sag/spacers-for-end-force.ts'
export { type OtherSetting, type TravelQuestion, type TravelUsed, travelUsed } from './sag/travel-used.ts'
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
export { type Bolt, type BoltQuestion, bolt } from './torque/bolt.ts'
export { type StripQuestion, type ThreadStrip, threadStrip } from './torque/thread-strip.ts'
export { type ChoiceQuestion, type Wrench, type WrenchChoice, wrenchChoice } from './torque/wrench-choice.ts'
export { type WrenchQuestion, wrenchSetting } from './torque/wrench-setting.ts'
export { type Clearance, type ClearanceQuestion, clearance } from './wear/clearance.ts'
export { type Fit, type FitQuestion, fitIso286, isoHoles, isoShafts } from './wear/fit-iso286.ts'
export { type Rock, type RockQuestion, rock } from './wear/rock.ts'
