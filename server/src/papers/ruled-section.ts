import { type SourceKind, say } from '@legwork/trade'
import type { Ink, Paper } from './paper.ts'
import { drawSource, markWidth } from './source-mark.ts'
import { drawVerdict, type PageVerdict } from './verdict-mark.ts'
import { drawLines, type Line, wrap } from './wrap.ts'

export interface RuledRow {
  what: string
  figure?: string
  source?: SourceKind | null
  verdict?: PageVerdict
}
/** `foot` stands small under the last row: whose limits, who did it. */
export interface Section {
  head: string
  rows: readonly RuledRow[]
  foot?: string | null
}

const book: Ink = { face: 'book', size: 13 }
const bold: Ink = { face: 'book-600', size: 13 }
const small: Ink = { face: 'book', size: 12 }
const figures: Ink = { face: 'lettering-500', size: 13.5 }
const [headHeight, verdictWidth, footLead] = [22, 72, 15]

/** From line to line, and what a row has beside its lines. */
export interface Density {
  lead: number
  pad: number
}
export const roomy: Density = { lead: 16, pad: 8 }
export const dense: Density = { lead: 14.5, pad: 4.5 }
/** Lines of one row that stay together; a longer one goes on over the page. */
const together = 30

interface LaidOut {
  row: RuledRow
  lines: readonly Line[]
  figure: readonly Line[]
  indent: number
  height: number
}

/** A row is measured several times before it is drawn, and every measuring sets its text. */
const known = new WeakMap<Paper, Map<string, LaidOut[]>>()

function layOut(paper: Paper, row: RuledRow, width: number, density: Density): LaidOut[] {
  const rows = known.get(paper) ?? new Map<string, LaidOut[]>()
  known.set(paper, rows)
  const key = JSON.stringify([row, width, density])
  const before = rows.get(key) ?? setOut(paper, row, width, density)
  rows.set(key, before)
  return before
}

function setOut(paper: Paper, row: RuledRow, width: number, { lead, pad }: Density): LaidOut[] {
  const indent = row.verdict ? verdictWidth : 0
  const mark = row.source ? markWidth + 6 : 0
  const figure = row.figure ? wrap(paper, [{ ink: figures, text: row.figure }], width * 0.56 - mark) : []
  const taken = (figure.length > 0 ? Math.max(...figure.map((line) => line.width)) + 10 : 0) + mark
  const all = wrap(paper, [{ ink: book, text: row.what }], width - indent - taken)
  const parts: LaidOut[] = []
  for (let from = 0; from < Math.max(1, all.length); from += together) {
    const lines = all.slice(from, from + together)
    const own = from === 0 ? figure : []
    const height = Math.max(1, lines.length, own.length) * lead + pad
    parts.push({ row: from === 0 ? row : { what: row.what }, lines, figure: own, indent, height })
  }
  return parts
}

function footOf(paper: Paper, section: Section, width: number): readonly Line[] {
  return section.foot ? wrap(paper, [{ ink: small, text: section.foot }], width) : []
}

const footHeight = (lines: readonly Line[]): number => (lines.length === 0 ? 0 : lines.length * footLead + 4)

/** Height of a section with all its rows. */
export function sectionHeight(paper: Paper, section: Section, width: number, density: Density): number {
  const rows = section.rows.flatMap((row) => layOut(paper, row, width, density))
  return headHeight + rows.reduce((sum, { height }) => sum + height, 0) + footHeight(footOf(paper, section, width))
}

/** Height of its head and the first row: less than that is no beginning. */
export function beginningHeight(paper: Paper, section: Section, width: number, density: Density): number {
  const first = section.rows[0]
  return headHeight + (first ? (layOut(paper, first, width, density)[0]?.height ?? 0) : 0)
}

/** Rows of a section that found no place on the page. */
export interface Drawn {
  height: number
  rest: Section | null
}

/** Draws a headed list of ruled rows, figures to the right, as far as `room` goes; what has no room is handed back. */
export function drawSection(
  paper: Paper,
  section: Section,
  at: { x: number; y: number; width: number; room: number },
  density: Density,
): Drawn {
  const { x, y, width, room } = at
  paper.text({ face: 'lettering-600', size: 15 }, section.head, x, y + 14)
  paper.line([x, y + 21], [x + width, y + 21], 1)
  let down = headHeight
  for (const [index, row] of section.rows.entries()) {
    const parts = layOut(paper, row, width, density)
    for (const [part, laid] of parts.entries()) {
      if (down + laid.height > room + 0.5 && down > headHeight) {
        const left = parts.slice(part).map(({ lines }) => lines.map(textOf).join(''))
        const again = part === 0 ? [row] : [{ what: left.join('') }]
        return {
          height: down,
          rest: { ...section, head: goesOn(section.head), rows: rowsAfter(section, index, again) },
        }
      }
      drawRow(paper, laid, { x, y: y + down, width }, density)
      down += laid.height
      hairline(paper, x, x + width, y + down)
    }
  }
  const foot = footOf(paper, section, width)
  drawLines(paper, foot, x, y + down + footLead, footLead)
  return { height: down + footHeight(foot), rest: null }
}

const textOf = (line: Line): string => line.pieces.map((piece) => piece.text).join('')
const rowsAfter = ({ rows }: Section, index: number, again: readonly RuledRow[]) => [...again, ...rows.slice(index + 1)]

/** The head of what goes on over the page. */
function goesOn(head: string): string {
  const ending = say('paper.goes-on', { head: '' })
  return head.endsWith(ending) ? head : say('paper.goes-on', { head })
}

function drawRow(
  paper: Paper,
  { row, lines, figure, indent }: LaidOut,
  { x, y, width }: { x: number; y: number; width: number },
  { lead, pad }: Density,
): void {
  const base = y + lead + pad / 2 - 4
  if (row.verdict) {
    drawVerdict(paper, row.verdict, x, base)
    paper.text(bold, say(`paper.verdict.${row.verdict}`), x + 17, base)
  }
  drawLines(paper, lines, x + indent, base, lead)
  const right = x + width - (row.source ? markWidth + 6 : 0)
  for (const [nth, line] of figure.entries())
    paper.text(figures, textOf(line).trimEnd(), right, base + nth * lead, 'end')
  if (row.source) drawSource(paper, row.source, x + width - markWidth, base)
}

/** The rule under a row: thinner and lighter than the rule under a heading. */
export function hairline(paper: Paper, from: number, to: number, y: number): void {
  paper.doc.save().strokeColor('#999')
  paper.line([from, y], [to, y], 0.5)
  paper.doc.restore()
}
