import { type ForkParameters, setPlaces } from '@legwork/drawing'
import { type DrawnFork, drawFork } from './fork-drawing.ts'
import type { PageFigure } from './hand-over-page-data.ts'
import type { Ink, Paper, Point } from './paper.ts'
import { hairline } from './ruled-section.ts'
import { drawSource, markWidth } from './source-mark.ts'
import { drawLines, wrap } from './wrap.ts'

const small: Ink = { face: 'book', size: 12 }
const [left, right] = [52, 742]
/** What the compression's figure takes above the drawing, and the shortest distance below it. */
const [above, below] = [46, 32]

/** The fork's drawing with every setting written where it is set, from `top` down; answers the y below it. */
export function drawSettingsOnFork(
  paper: Paper,
  fork: ForkParameters,
  settings: readonly PageFigure[],
  top: number,
): number {
  const over = settings.some(({ place }) => place === 'compression') ? above : 12
  const drawn = drawFork(paper, fork, { left, right, top: top + over })
  const places = setPlaces(fork, fork.ring ?? 0)
  return Math.max(drawn.bottom, ...settings.map((figure) => drawSetting(paper, figure, drawn, places)))
}

function drawSetting(
  paper: Paper,
  figure: PageFigure,
  { on, scale, top, bottom }: DrawnFork,
  places: ReturnType<typeof setPlaces>,
): number {
  const lead = (...points: Point[]) => {
    for (const [index, point] of points.entries()) {
      const before = points[index - 1]
      if (before) paper.line(before, point, 0.6)
    }
    const [x, y] = points[0] ?? [0, 0]
    paper.doc.circle(x, y, 1.8).fill('#000')
  }
  const under = bottom + below
  switch (figure.place) {
    case 'compression': {
      const at = on(places.compression)
      lead(at, [at[0], top - 26], [at[0] - 40, top - 26])
      return callout(paper, figure, { x: at[0] - 46, y: top - 20, align: 'end', size: 26, width: 300 })
    }
    case 'rebound': {
      const at = on(places.rebound)
      const y = at[1] + 15 * scale + 26
      // Past the axle, which lies behind the feet.
      const x = on([40, 0])[0]
      lead(at, [at[0], y - 8], [x - 6, y - 8])
      return callout(paper, figure, { x, y, align: 'start', size: 26, width: 240 })
    }
    case 'spacers': {
      const at = on(places.spacers)
      const y = at[1] - 13 * scale - 24
      lead(at, [at[0] - 26, y - 6], [at[0] - 34, y - 6])
      return callout(paper, figure, { x: at[0] - 40, y, align: 'end', size: 26, width: 190 })
    }
    case 'sag': {
      const [from, to] = [on(places.unmoved), on(places.ring)]
      const y = bottom + 10
      for (const [x, start] of [from, to]) paper.line([x, start + 5], [x, y + 6], 0.6)
      paper.line([from[0], y], [to[0], y], 0.6)
      arrow(paper, from[0], y, 1)
      arrow(paper, to[0], y, -1)
      const x = Math.min(to[0], right - 166)
      return callout(paper, figure, { x, y: under + 4, align: 'end', size: 26, width: 190 })
    }
    case 'bath-oil': {
      const at = on(places.bath)
      lead(at, [at[0], under - 6], [at[0] + 14, under - 6])
      return callout(paper, figure, { x: at[0] + 20, y: under, align: 'start', size: 26, width: 280 })
    }
    case 'pressure': {
      const at = on(places.valve)
      lead(at, [at[0], bottom + 2])
      return callout(paper, figure, { x: right, y: under + 10, align: 'end', size: 46, width: 158 })
    }
  }
}

interface Callout {
  x: number
  y: number
  align: 'start' | 'end'
  size: number
  width: number
}

/** Figure large, its measure smaller; below it where it comes from, what it is, and its detail. Answers the y below. */
function callout(paper: Paper, of: PageFigure, { x, y, align, size, width }: Callout): number {
  const [number = '', ...rest] = of.figure.split(/\s/u)
  const big: Ink = { face: 'lettering-500', size }
  const measure: Ink = { face: 'lettering', size: Math.max(15, size * 0.48) }
  const unit = rest.length > 0 ? ` ${rest.join(' ')}` : ''
  const total = paper.width(big, number) + paper.width(measure, unit)
  const start = align === 'end' ? x - total : x
  paper.text(measure, unit, start + paper.text(big, number, start, y), y)
  let at = y + 12 + size * 0.16
  const words = of.detail === null ? of.name : `${of.name}, ${of.detail}`
  for (const [index, line] of wrap(paper, [{ ink: small, text: words }], width - markWidth - 5).entries()) {
    const text = line.pieces
      .map((piece) => piece.text)
      .join('')
      .trimEnd()
    const from = align === 'end' ? x - paper.width(small, text) : x + markWidth + 5
    // Lines of parts behind the words stop before them.
    paper.doc.rect(from - markWidth - 8, at - 11, paper.width(small, text) + markWidth + 10, 14).fill('#fff')
    paper.doc.fillColor('#000')
    paper.text(small, text, from, at)
    if (index === 0) drawSource(paper, of.source, from - markWidth - 5, at)
    at += 15
  }
  return at
}

function arrow(paper: Paper, x: number, y: number, way: 1 | -1) {
  paper.doc.polygon([x, y], [x + way * 7, y - 2.2], [x + way * 7, y + 2.2]).fill('#000')
}

const figures: Ink = { face: 'lettering-500', size: 17 }

/** Settings of a unit without a drawing, as ruled rows; answers the y below. */
export function drawSettingsAsRows(paper: Paper, settings: readonly PageFigure[], y: number): number {
  let at = y
  for (const figure of settings) {
    const width = paper.text(figures, figure.figure, right, at + 19, 'end')
    const words = figure.detail === null ? figure.name : `${figure.name}, ${figure.detail}`
    const source = right - width - 10 - markWidth
    drawSource(paper, figure.source, source, at + 19)
    const lines = wrap(paper, [{ ink: { face: 'book', size: 13.5 }, text: words }], source - 70)
    at = drawLines(paper, lines, left, at + 19, 16) - 8
    hairline(paper, left, right, at)
  }
  return at
}
