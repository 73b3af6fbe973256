import { drawFork, type ForkDrawing } from './fork-drawing.ts'
import type { PageFigure } from './hand-over-page-data.ts'
import type { Ink, Paper, Point } from './paper.ts'
import { hairline } from './ruled-section.ts'
import { drawSourceWord, sourceWordWidth } from './source-mark.ts'
import { drawLines, wrap } from './wrap.ts'

const small: Ink = { face: 'book', size: 12 }
const [damperAxis, springAxis] = [262, 392]

/** The fork's drawing with every setting written where it is set. Takes the page from y 175 to 534. */
export function drawSettingsOnFork(paper: Paper, fork: ForkDrawing, settings: readonly PageFigure[]): void {
  const at = drawFork(paper, fork, damperAxis, springAxis)
  const lead = (...points: Point[]) => {
    for (const [index, point] of points.entries()) {
      const before = points[index - 1]
      if (before) paper.line(before, point, 0.6)
    }
    const [x, y] = points[0] ?? [0, 0]
    paper.doc.circle(x, y, 1.8).fill('#000')
  }
  for (const figure of settings) {
    if (figure.place === 'compression') {
      lead(at.compression, [at.compression[0], 190], [690, 190])
      callout(paper, figure, 684, 194, 'end', 26, 280)
    }
    if (figure.place === 'rebound') {
      lead(at.rebound, [at.rebound[0], 313], [at.rebound[0] + 16, 313])
      callout(paper, figure, at.rebound[0] + 22, 319, 'start', 26, 220)
    }
    if (figure.place === 'spacers') {
      lead(at.spacers, [at.spacers[0] - 34, 316], [at.spacers[0] - 42, 316])
      callout(paper, figure, at.spacers[0] - 48, 322, 'end', 26, 160)
    }
    if (figure.place === 'sag') {
      const [from, to] = [at.wiper[0], at.ring[0]]
      for (const x of [from, to]) paper.line([x, at.wiper[1] + 12], [x, 444], 0.6)
      paper.line([from, 438], [to, 438], 0.6)
      arrow(paper, from, 438, 1)
      arrow(paper, to, 438, -1)
      callout(paper, figure, Math.min(from, 430), 470, 'start', 26, 142)
    }
    if (figure.place === 'bath-oil') {
      lead(at.oil, [at.oil[0], 466], [at.oil[0] + 16, 466])
      callout(paper, figure, at.oil[0] + 22, 472, 'start', 26, 260)
    }
    if (figure.place === 'pressure') {
      lead(at.valve, [at.valve[0], 432])
      callout(paper, figure, 742, 474, 'end', 46, 156)
    }
  }
}

/** Figure large, its measure smaller; below it what it is, its detail and where it comes from. */
function callout(
  paper: Paper,
  of: PageFigure,
  x: number,
  y: number,
  align: 'start' | 'end',
  size: number,
  width: number,
) {
  const [number = '', ...rest] = of.figure.split(/\s/u)
  const big: Ink = { face: 'lettering-500', size }
  const measure: Ink = { face: 'lettering', size: Math.max(15, size * 0.48) }
  const unit = rest.length > 0 ? ` ${rest.join(' ')}` : ''
  const total = paper.width(big, number) + paper.width(measure, unit)
  const start = align === 'end' ? x - total : x
  paper.text(measure, unit, start + paper.text(big, number, start, y), y)
  let below = y + 12 + size * 0.2
  const words = of.detail === null ? of.name : `${of.name}, ${of.detail}`
  for (const line of wrap(paper, [{ ink: small, text: words }], width, 3)) {
    const text = line.pieces
      .map((piece) => piece.text)
      .join('')
      .trimEnd()
    paper.text(small, text, x, below, align)
    below += 15
  }
  drawSourceWord(paper, of.source, align === 'end' ? x - sourceWordWidth(paper, of.source, small) : x, below, small)
}

function arrow(paper: Paper, x: number, y: number, way: 1 | -1) {
  paper.doc.polygon([x, y], [x + way * 7, y - 2.2], [x + way * 7, y + 2.2]).fill('#000')
}

const figures: Ink = { face: 'lettering-500', size: 17 }

/** Settings of a unit without a drawing, as ruled rows; answers the y below. */
export function drawSettingsAsRows(paper: Paper, settings: readonly PageFigure[], y: number): number {
  let at = y
  for (const figure of settings) {
    const width = paper.text(figures, figure.figure, 742, at + 19, 'end')
    const words = figure.detail === null ? figure.name : `${figure.name}, ${figure.detail}`
    const source = 742 - width - 16 - sourceWordWidth(paper, figure.source, small)
    drawSourceWord(paper, figure.source, source, at + 19, small)
    const lines = wrap(paper, [{ ink: { face: 'book', size: 13.5 }, text: words }], source - 70, 2)
    at = drawLines(paper, lines, 52, at + 19, 16) - 8
    hairline(paper, 52, 742, at)
  }
  return at
}
