import { type SourceKind, say } from '@legwork/trade'
import type { PageVerdict } from './hand-over-page-data.ts'
import type { Ink, Paper } from './paper.ts'
import { drawSource, markWidth } from './source-mark.ts'
import { drawVerdict } from './verdict-mark.ts'
import { clip, drawLines, wrap } from './wrap.ts'

export type RuledRow = { what: string; figure?: string; source?: SourceKind | null; verdict?: PageVerdict }
export type Section = { head: string; rows: readonly RuledRow[] }

const book: Ink = { face: 'book', size: 13 }
const bold: Ink = { face: 'book-600', size: 13 }
const figures: Ink = { face: 'lettering-500', size: 13.5 }
const [lead, pad, headHeight, verdictWidth] = [16, 8, 30, 92]

function layOut(paper: Paper, row: RuledRow, width: number) {
  const figure = row.figure ? clip(paper, figures, row.figure, width * 0.5) : ''
  const indent = row.verdict ? verdictWidth : 0
  const taken = (figure === '' ? 0 : paper.width(figures, figure) + 10) + (row.source ? markWidth + 6 : 0)
  const lines = wrap(paper, [{ ink: book, text: row.what }], width - indent - taken, 3)
  return { figure, indent, lines, height: Math.max(1, lines.length) * lead + pad }
}

/** Height of a section with all its rows. */
export function sectionHeight(paper: Paper, section: Section, width: number): number {
  return headHeight + section.rows.reduce((sum, row) => sum + layOut(paper, row, width).height, 0)
}

/** Draws a headed list of ruled rows, figures to the right; rows without a place are counted in the last line. */
export function drawSection(paper: Paper, section: Section, x: number, y: number, width: number, height: number): void {
  paper.text({ face: 'lettering-600', size: 15 }, section.head, x, y + 14)
  paper.line([x, y + 21], [x + width, y + 21], 1)
  let at = y + headHeight - 8
  for (const [index, row] of section.rows.entries()) {
    const { figure, indent, lines, height: needs } = layOut(paper, row, width)
    const kept = index === section.rows.length - 1 ? 0 : lead + pad
    if (at + needs + kept > y + height + 0.5) {
      paper.text(book, say('paper.more', { n: section.rows.length - index }), x, at + lead)
      return
    }
    if (row.verdict) {
      drawVerdict(paper, row.verdict, x, at + lead)
      paper.text(bold, say(`paper.verdict.${row.verdict}`), x + 17, at + lead)
    }
    drawLines(paper, lines, x + indent, at + lead, lead)
    const right = x + width - (row.source ? markWidth + 6 : 0)
    if (figure !== '') paper.text(figures, figure, right, at + lead, 'end')
    if (row.source) drawSource(paper, row.source, x + width - markWidth, at + lead)
    at += needs
    hairline(paper, x, x + width, at)
  }
}

/** The rule under a row: thinner and lighter than the rule under a heading. */
export function hairline(paper: Paper, from: number, to: number, y: number): void {
  paper.doc.save().strokeColor('#999')
  paper.line([from, y], [to, y], 0.5)
  paper.doc.restore()
}
