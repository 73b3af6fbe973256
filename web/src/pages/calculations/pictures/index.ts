/** Pictures of answers, by the calculation they belong to; a calculation without one is told in lines and tables. */
import type { ComponentType } from 'react'
import { DiagnosePicture } from './diagnose.tsx'
import { DoubtPicture } from './doubt.tsx'
import { DropPicture } from './drop.tsx'
import { LeakDownPicture } from './leak-down.tsx'
import { LifePicture } from './life.tsx'
import type { PictureProps } from './picture.ts'
import { PressTestPicture } from './press-test.tsx'
import { SpringCurvePicture } from './spring-curve.tsx'

export const pictures: Readonly<Record<string, ComponentType<PictureProps>>> = {
  'spring-curve': SpringCurvePicture,
  drop: DropPicture,
  'leak-down': LeakDownPicture,
  'press-test': PressTestPicture,
  life: LifePicture,
  diagnose: DiagnosePicture,
  doubt: DoubtPicture,
}
