/** Pictures of answers, by the calculation they belong to; a calculation without one is told in lines and tables. */
import type { ComponentType } from 'react'
import { AirOverAltitudePicture } from './air-over-altitude.tsx'
import { BikeAtSagPicture } from './bike-at-sag.tsx'
import { ClearancePicture } from './clearance.tsx'
import { DampingOverClicksPicture } from './damping-over-clicks.tsx'
import { DampingOverTemperaturePicture } from './damping-over-temperature.tsx'
import { DiagnosePicture } from './diagnose.tsx'
import { DoubtPicture } from './doubt.tsx'
import { DropPicture } from './drop.tsx'
import { SpacersPicture, TravelUsedPicture } from './end-of-the-stroke.tsx'
import { LeakDownPicture } from './leak-down.tsx'
import { LeverageOverStrokePicture } from './leverage-over-stroke.tsx'
import { LifePicture } from './life.tsx'
import { LoadAlongLegPicture } from './load-along-leg.tsx'
import { BlendPicture, ResidualOilPicture } from './mixed-oils.tsx'
import { OilInALegPicture } from './oil-in-a-leg.tsx'
import { OilOverTemperaturePicture } from './oil-over-temperature.tsx'
import type { PictureProps } from './picture.ts'
import { PressTestPicture } from './press-test.tsx'
import { PumpOnAChamberPicture } from './pump-on-a-chamber.tsx'
import { ReadingsOfAPumpPicture } from './readings-of-a-pump.tsx'
import { ReturnOverTimePicture } from './return-over-time.tsx'
import { SpringCurvePicture } from './spring-curve.tsx'
import { AmbientShiftPicture, CalibratePicture, PressureForSagPicture, SagPicture } from './springs-at-rest.tsx'
import { ToleranceZonesPicture } from './tolerance-zones.tsx'
import { WrenchRangesPicture } from './wrench-ranges.tsx'
import { WrenchWithAdapterPicture } from './wrench-with-adapter.tsx'

export const pictures: Readonly<Record<string, ComponentType<PictureProps>>> = {
  'spring-curve': SpringCurvePicture,
  sag: SagPicture,
  'pressure-for-sag': PressureForSagPicture,
  'spacers-for-end-force': SpacersPicture,
  'travel-used': TravelUsedPicture,
  calibrate: CalibratePicture,
  'fork-load': LoadAlongLegPicture,
  'shock-load': LeverageOverStrokePicture,
  'both-ends': BikeAtSagPicture,
  'air-pressure': AirOverAltitudePicture,
  'ambient-shift': AmbientShiftPicture,
  'pump-reading': PumpOnAChamberPicture,
  'hose-ratio': ReadingsOfAPumpPicture,
  'leak-down': LeakDownPicture,
  torque: WrenchWithAdapterPicture,
  'wrench-choice': WrenchRangesPicture,
  viscosity: OilOverTemperaturePicture,
  blend: BlendPicture,
  'residual-oil': ResidualOilPicture,
  'oil-height': OilInALegPicture,
  'return-time': ReturnOverTimePicture,
  'damping-from-return': ReturnOverTimePicture,
  'damping-at-temperature': DampingOverTemperaturePicture,
  'clicks-for-damping': DampingOverClicksPicture,
  drop: DropPicture,
  clearance: ClearancePicture,
  'fit-iso286': ToleranceZonesPicture,
  'press-test': PressTestPicture,
  life: LifePicture,
  diagnose: DiagnosePicture,
  doubt: DoubtPicture,
}
