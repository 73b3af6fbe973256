import { type SourceKind, say } from '@legwork/trade'
import type { Ink, Paper } from './paper.ts'

// Paths on a grid of 16, the same shapes as on the screen; `filled` where a part is solid.
const marks: Record<SourceKind, { drawn: string; filled: string }> = {
  'makers-sheet': { drawn: 'M3 1.5h10v13H3zM3 5h10', filled: '' },
  'measured-here': {
    drawn: 'M1.2 2v12M14.8 2v12M5 8h6',
    filled: 'M2.2 8l4-1.9v3.8zM13.8 8l-4-1.9v3.8z',
  },
  'worked-out': { drawn: 'M2 5.6h12M2 10.4h12', filled: '' },
  handbook: {
    drawn:
      'M8 4.2C6 2.6 3.6 2.4 1.5 2.9v10c2.1-.5 4.5-.3 6.5 1.3 2-1.6 4.4-1.8 6.5-1.3v-10C12.4 2.4 10 2.6 8 4.2zM8 4.2v10',
    filled: '',
  },
  'common-practice': {
    drawn: 'M1.5 6.5c2-2.6 4.3-2.6 6.5-.6s4.5 2 6.5-.6M1.5 11.5c2-2.6 4.3-2.6 6.5-.6s4.5 2 6.5-.6',
    filled: '',
  },
  'rider-said': {
    drawn: 'M6.3 3.5C3.5 4.6 2.2 6.8 2.2 9.6M14 3.5c-2.8 1.1-4.1 3.3-4.1 6.1',
    filled: 'M2.1 10.7a1.9 1.9 0 1 0 3.8 0a1.9 1.9 0 1 0-3.8 0M9.8 10.7a1.9 1.9 0 1 0 3.8 0a1.9 1.9 0 1 0-3.8 0',
  },
}

export const markWidth = 11

/** Draws the mark of a source, 11 wide, on a baseline. */
export function drawSource(paper: Paper, source: SourceKind, x: number, y: number): void {
  const { doc } = paper
  const { drawn, filled } = marks[source]
  doc
    .save()
    .translate(x, y - 9.5)
    .scale(markWidth / 16)
    .lineWidth(1.6)
    .lineCap('round')
    .lineJoin('round')
  doc.path(drawn).stroke()
  if (filled) doc.path(filled).fill('#000')
  doc.restore()
}

/** The mark and its word; answers the width. */
export function drawSourceWord(paper: Paper, source: SourceKind, x: number, y: number, ink: Ink): number {
  drawSource(paper, source, x, y)
  return markWidth + 4 + paper.text(ink, say(`paper.source.${source}`), x + markWidth + 4, y)
}
