/** Every code an error can carry, and when. The list in `docs/errors.md` is this one; a test holds them together. */
export const refusalCodes = {
  missing: 'A field that is needed is not there.',
  'unknown-field': 'A field that the calculation does not know.',
  'wrong-type': 'A value of another type than the field holds.',
  'not-a-choice': 'A word that is not among those allowed.',
  'not-a-number': 'No finite number could be read.',
  'not-a-date': 'A text that is no date or time of the calendar as ISO 8601 writes it.',
  'needs-measure': 'A bare number in a text where a measure is needed.',
  'unknown-measure': 'A measure that is not in the table.',
  'wrong-measure': 'A measure of something else.',
  'ambiguous-number': 'A number that can be read in two ways.',
  'unlikely-temperature': 'A temperature outside 200–420 K: probably °C or °F without its measure.',
  'unlikely-absolute-pressure': 'An absolute pressure under 1 kPa: probably a gauge pressure or another measure.',
  'out-of-range': 'A value outside what is allowed for the field.',
  'not-whole': 'A number that must be whole.',
  'wrong-count': 'A list that is too short or too long.',
  'does-not-fit': 'A value that does not fit another field.',
  'beyond-end': 'A stroke beyond the end of the unit or of a chamber.',
  'wrong-form': 'Fields of two ways to ask, or of none.',
  'no-answer': 'No value can give what is wanted.',
  'too-many-steps': 'Following the motion would take more steps or time than is allowed.',
  'above-maximum': 'The answer lies above the largest pressure of the sheet.',
  'coil-has-no-pressure': 'A pressure was asked for of a coil spring.',
  'not-json': 'The text is not a JSON object.',
  'unknown-calculation': 'No calculation has that name.',
} as const

export type RefusalCode = keyof typeof refusalCodes
