import type { ForkParameters } from '@legwork/drawing'
import { say } from '@legwork/trade'
import { drawCode } from './code.ts'
import { drawFork } from './fork-drawing.ts'
import type { Letterhead } from './letterhead.ts'
import { type Ink, openPaper } from './paper.ts'
import { drawSection, type RuledRow, roomy, sectionHeight } from './ruled-section.ts'
import { drawSourceWord } from './source-mark.ts'
import { drawTitleBlock, shopCell } from './title-block.ts'
import { drawLines, wrap } from './wrap.ts'

export interface StartCard {
  shop: Letterhead
  job: string
  date: string
  unit: string
  serial: string | null
  drawing: ForkParameters | null
  /** A pressure for each mass of a rider with kit. */
  rows: readonly RuledRow[]
  /** What they rest on, each in a sentence. */
  rests: readonly string[]
  cautions: readonly string[]
  address: string
}

const book: Ink = { face: 'book', size: 13 }
const bold: Ink = { face: 'book-600', size: 13 }
const small: Ink = { face: 'book', size: 12 }
const [left, right, column, second] = [52, 742, 328, 414]

/** The card of a unit that came alone: a pressure for each rider's mass, what it rests on, and how to go on. A4, one page. */
export function renderStartCard(card: StartCard): Promise<Uint8Array> {
  const { shop, job, date, unit, serial, drawing, rows } = card
  const title = say('paper.title.start-card', { job })
  const paper = openPaper({ title, author: shop.name, width: 794, height: 1123 })
  const head = drawTitleBlock(paper, [
    shopCell(shop, date, 0.5),
    {
      over: say('paper.head.unit'),
      name: unit,
      under: [serial === null ? null : say('paper.serial', { serial })],
      share: 0.36,
      size: 15,
    },
    { over: say('paper.head.job'), name: job, under: [], share: 0.14, size: 15 },
  ])
  paper.text({ face: 'lettering-600', size: 24 }, say('paper.start-card'), left, head + 44)
  let y = drawLines(
    paper,
    wrap(paper, [{ ink: book, text: say('paper.start-card.how') }], right - left),
    left,
    head + 70,
    18,
  )
  if (drawing) y = drawFork(paper, drawing, { left, right, top: y }).bottom + 14
  const half = Math.ceil(rows.length / 2)
  const halves = [rows.slice(0, half), rows.slice(half)].map((some) => ({
    head: say('paper.start-card.head'),
    rows: some,
  }))
  const height = Math.max(...halves.map((section) => sectionHeight(paper, section, column, roomy)))
  for (const [index, section] of halves.entries())
    drawSection(paper, section, { x: index === 0 ? left : second, y, width: column, room: height }, roomy)
  y += height + 16
  drawSourceWord(paper, 'worked-out', left, y, small)
  y += 26
  const rests = wrap(paper, [{ ink: book, text: card.rests.join(' ') }], right - left - 130)
  const below = drawLines(paper, rests, left, y, 18)
  drawLines(paper, wrap(paper, [{ ink: bold, text: card.cautions.join(' ') }], right - left - 130), left, below + 8, 18)
  drawCode(paper, card.address, right - 104, y - 16, 104)
  return paper.finish()
}
