/** The line drawing of a fork on a page: the section's shapes without their washes, hatching and line alone. */
import {
  extentOf,
  type ForkParameters,
  forkShapes,
  hatchings,
  type LineShape,
  lineDashes,
  lineStrokes,
  outlinesOf,
  type Place,
  type Shape,
  strokes,
} from '@legwork/drawing'
import type { Paper } from './paper.ts'

/** From the drawing's millimetres to the units of the page. */
export interface DrawnFork {
  on: (place: Place) => Place
  scale: number
  top: number
  bottom: number
}

type Doc = PDFKit.PDFDocument

const black = new Set(['ink', 'hand'])
/** What is not there leaves the page as it is. */
const unseen = new Set(['air', 'none'])

function trace(doc: Doc, outlines: readonly (readonly Place[])[]): Doc {
  for (const outline of outlines) doc.polygon(...outline.map(([x, y]): [number, number] => [x, y]))
  return doc
}

/** Lines across a part, on one grid of the drawing, so that the halves of a part match. */
function hatch(doc: Doc, outlines: readonly (readonly Place[])[], look: (typeof hatchings)[keyof typeof hatchings]) {
  const turns = look.cross ? [look.turn, look.turn + 90] : [look.turn]
  for (const turn of turns) {
    const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)]
    // Where the part lies once the page is turned so that the lines hang straight down.
    const places = outlines.flat().map(([x, y]): Place => [x * cos + y * sin, y * cos - x * sin])
    const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)]
    const [top, bottom] = [Math.min(...ys), Math.max(...ys)]
    trace(doc.save(), outlines).clip().rotate(turn).lineWidth(lineStrokes.fine)
    if (look.dashes) doc.dash(look.dashes[0], { space: look.dashes[1] })
    const halfDash = look.staggered && look.dashes ? (look.dashes[0] + look.dashes[1]) / 2 : 0
    const first = Math.ceil(Math.min(...xs) / look.pitch)
    for (let line = first; line * look.pitch <= Math.max(...xs); line += 1) {
      const x = line * look.pitch
      const earlier = line % 2 === 0 ? 0 : halfDash
      doc.moveTo(x, top - 1 - (top % look.pitch) - earlier).lineTo(x, bottom + 1)
    }
    doc.stroke().restore()
  }
}

function drawLine(doc: Doc, { dashes, weight }: LineShape, outline: readonly Place[]): void {
  const pattern = lineDashes[dashes]
  doc.save().lineWidth(lineStrokes[weight])
  // PDF 32000-1, 8.4.3.6: an array of dashes and gaps; the kit's types know one dash and one gap.
  if (pattern) doc.addContent(`[${pattern.join(' ')}] 0 d`)
  for (const [index, [x, y]] of outline.entries()) {
    if (index === 0) doc.moveTo(x, y)
    else doc.lineTo(x, y)
  }
  doc.stroke().restore()
}

function drawShape(doc: Doc, shape: Shape): void {
  const outlines = outlinesOf(shape, true)
  if (shape.kind === 'line') {
    for (const outline of outlines) drawLine(doc, shape, outline)
    return
  }
  if (!unseen.has(shape.material)) trace(doc, outlines).fill(black.has(shape.material) ? '#000' : '#fff')
  // Foam is dots and rubber is crossed on the screen; at this size on paper both close up to black.
  if (shape.hatching) hatch(doc, outlines, hatchings[shape.hatching])
  const width = strokes[shape.outline]
  if (width > 0) trace(doc, outlines).lineWidth(width).strokeColor('#000').stroke()
}

/**
 * Draws both legs of a fork across the page, to scale along and across, from `top` down.
 *
 * @returns how its millimetres lie on the page, and where it ends
 */
export function drawFork(
  paper: Paper,
  fork: ForkParameters,
  at: { left: number; right: number; top: number },
): DrawnFork {
  const { doc } = paper
  const shapes = forkShapes(fork)
  const { x, y, width, height } = extentOf(shapes, true)
  const scale = Math.min((at.right - at.left) / width, mostScale)
  const [dx, dy] = [at.right - (x + width) * scale, at.top - y * scale]
  doc.save().translate(dx, dy).scale(scale).lineJoin('round')
  for (const shape of shapes) drawShape(doc, shape)
  doc.restore().fillColor('#000')
  return {
    on: ([u, v]) => [dx + u * scale, dy + v * scale],
    scale,
    top: at.top,
    bottom: at.top + height * scale,
  }
}

/** A short fork is not drawn larger than this [page units a millimetre]: the settings round it need their room. */
const mostScale = 1.32
