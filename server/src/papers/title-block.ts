import { say } from '@legwork/trade'
import type { Letterhead } from './letterhead.ts'
import type { Ink, Paper } from './paper.ts'
import { drawLines, type Line, wrap } from './wrap.ts'

const small: Ink = { face: 'book', size: 12 }
const [left, right, top] = [52, 742, 45]

/** One cell: what it is, small; its name; further lines, small. A line that is null is left out. */
export interface TitleCell {
  over: string | null
  name: string
  under: readonly (string | null)[]
  /** Of the width [0 … 1]. */
  share: number
  size: number
}

interface Row {
  line: Line
  lead: number
}

function rowsOf(paper: Paper, cell: TitleCell, width: number): Row[] {
  const lines = (ink: Ink, text: string | null, lead: number): Row[] =>
    text === null ? [] : wrap(paper, [{ ink, text }], width).map((line) => ({ line, lead }))
  return [
    ...lines(small, cell.over, 16),
    ...lines({ face: 'lettering-600', size: cell.size }, cell.name, 19),
    ...cell.under.flatMap((text) => lines(small, text, 16)),
  ]
}

/** The block at the head of a page, its cells as tall as the longest; answers the y of its lower rule. */
export function drawTitleBlock(paper: Paper, cells: readonly TitleCell[]): number {
  const [inset, whole] = [12, right - left]
  const widths = cells.map(({ share }) => share * whole)
  const starts = widths.map((_, index) => left + widths.slice(0, index).reduce((sum, width) => sum + width, 0))
  const all = cells.map((cell, index) => rowsOf(paper, cell, (widths[index] ?? 0) - inset * (index === 0 ? 1 : 2)))
  const tallest = Math.max(...all.map((rows) => rows.reduce((sum, { lead }) => sum + lead, 0)))
  const bottom = Math.max(115, top + tallest + 14)
  paper.line([left, top], [right, top], 2)
  paper.line([left, bottom], [right, bottom], 1)
  for (const [index, rows] of all.entries()) {
    const start = starts[index] ?? left
    if (index > 0) paper.line([start, top], [start, bottom], 1)
    let y = top + 4
    for (const { line, lead } of rows) {
      y += lead
      drawLines(paper, [line], start + (index === 0 ? 0 : inset), y, lead)
    }
  }
  return bottom
}

/** The workshop's own cell: where it is, its name, how to reach it, and who signs for what is on the page. */
export function shopCell(shop: Letterhead, by: string, share: number): TitleCell {
  return { over: shop.address, name: shop.name, under: [shop.phone, by], share, size: 17 }
}

/** Head and foot of the pages: from the second on whose they are, and on each which one of how many, where there are more. */
export function numberPages(paper: Paper, name: string): void {
  paper.onEveryPage((page, of) => {
    if (of === 1) return
    if (page > 1) {
      paper.text(small, name, left, 58)
      paper.line([left, 66], [right, 66], 1)
    }
    paper.text(small, say('paper.page', { page, of }), right, 1106, 'end')
  })
}
