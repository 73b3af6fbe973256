/** Texts of the product that are there from the first page on, assembled from one file a subject. */
import { appFigureWords } from './app-figures.ts'
import { appFrameWords } from './app-frame.ts'
import { appHandOverWords } from './app-hand-over.ts'
import { appJobWords } from './app-job.ts'
import { appPhotoWords } from './app-photos.ts'
import { appPlaceWords } from './app-places.ts'
import { appSetUpWords } from './app-set-up.ts'
import { appSheetWords } from './app-sheets.ts'
import { appTakeInWords } from './app-take-in.ts'
import { gateWords } from './gates.ts'
import { jobWords } from './job.ts'
import { refusalWords } from './refusals.ts'
import { restWords } from './rests.ts'
import { sheetWords } from './sheet.ts'
import { signWords } from './signs.ts'
import { stepWords } from './steps.ts'

export const catalogue = {
  ...jobWords,
  ...stepWords,
  ...gateWords,
  ...refusalWords,
  ...restWords,
  ...sheetWords,
  ...signWords,
  ...appFigureWords,
  ...appFrameWords,
  ...appPhotoWords,
  ...appPlaceWords,
  ...appJobWords,
  ...appSetUpWords,
  ...appSheetWords,
  ...appTakeInWords,
  ...appHandOverWords,
} as const satisfies Record<string, string>
