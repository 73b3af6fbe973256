import { type Face, fileFor } from './type-faces.ts'

/** A stretch of text set from one font file; `file` null: no font has it, `text` is one character. */
export type Run = { text: string; file: string | null }

// Joiners, variation selectors and marks of direction have no ink of their own and never need a box.
const inkless = /^(?:[\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff\u00ad]|\p{Variation_Selector})$/u
const combining = /^\p{M}$/u

/**
 * Splits text by the font file that can set each character, because a PDF has no fallback of its own.
 * Spaces stay with the run before them, so that words of a right-to-left name keep their order in one run.
 *
 * @example runsOf('book', 'Özgür →') // [{ text: 'Özgür ', file: 'stix-two-text-400' }, { text: '→', file: 'legwork-marks-400' }]
 */
export function runsOf(face: Face, text: string): Run[] {
  const runs: Run[] = []
  for (const character of printable(text).normalize('NFC')) {
    if (inkless.test(character)) continue
    const last = runs.at(-1)
    if (last?.file && (character === ' ' || combining.test(character))) {
      if (fileFor(face, 32) !== null || character !== ' ') {
        last.text += character
        continue
      }
    }
    const file = fileFor(face, character.codePointAt(0) ?? 0)
    if (file !== null && last?.file === file) last.text += character
    else runs.push({ text: character, file })
  }
  return runs
}

/** Control characters would be drawn as boxes: line ends and tabs become spaces, the rest goes. */
function printable(text: string): string {
  return text.replace(/[\t\r\n\u2028\u2029]+/g, ' ').replace(/\p{Cc}/gu, '')
}

/** What the box for a character without a font says: its code point in hexadecimal, as Unicode writes it. */
export function boxLabel(character: string): string {
  return (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
}
