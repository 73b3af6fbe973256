/** The dimensions that a pressure is worked out from, in the order in which they are asked. */
import { placeOn, type Sheet, type SheetPlace } from '@legwork/trade'

const springPaths = [
  'spring.bore',
  'spring.shaft',
  'spring.positiveVolume',
  'spring.negativeVolume',
  'spring.equalisingStroke',
  'spring.spacerVolume',
  'spacers',
  'lowerVolume',
  'spring.lowerRod',
] as const

/** Those that are not on the sheet yet. */
export function missingForSpring(sheet: Sheet): readonly SheetPlace[] {
  return springPaths.flatMap((path) => {
    const place = placeOn(sheet, path)
    return place && place.held === null ? [place] : []
  })
}
