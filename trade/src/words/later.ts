/** Texts of parts of the product that are loaded when they are opened: what keeps the first page light. */
import type { appBenchTestWords } from './app-bench-tests.ts'
import type { appCalculationFieldWords } from './app-calculation-fields.ts'
import type { appCalculationPictureWords } from './app-calculation-pictures.ts'
import type { appCalculationWords } from './app-calculations.ts'
import type { appInstrumentWords } from './app-instruments.ts'
import type { appLifeWords } from './app-life.ts'
import type { appStandingWords } from './app-standing.ts'
import type { faultTestWords } from './fault-tests.ts'
import type { faultWords } from './faults.ts'
import type { lookOverWords } from './look-over.ts'
import type { paperWords } from './papers.ts'
import type { supplyWords } from './supplies.ts'

export type LaterWords = typeof faultWords &
  typeof faultTestWords &
  typeof appCalculationWords &
  typeof appCalculationFieldWords &
  typeof appCalculationPictureWords &
  typeof appInstrumentWords &
  typeof lookOverWords &
  typeof paperWords &
  typeof supplyWords &
  typeof appLifeWords &
  typeof appStandingWords &
  typeof appBenchTestWords
