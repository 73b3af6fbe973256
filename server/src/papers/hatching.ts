import type { Point } from './paper.ts'

/** Fills rings with white, hatches them at 45 degrees and draws their outline; the two ways tell neighbours apart. */
export function drawHatched(
  doc: PDFKit.PDFDocument,
  rings: readonly (readonly Point[])[],
  way: 'fore' | 'back',
  outline: number,
): void {
  for (const ring of rings) {
    const points = ring.map(([x, y]): [number, number] => [x, y])
    const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)]
    const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
    const height = bottom - top
    doc.polygon(...points).fill('#fff')
    doc
      .save()
      .polygon(...points)
      .clip()
      .lineWidth(0.35)
      .strokeColor('#000')
    // Lines lie on one grid of the page, so that the halves of a part match.
    const pitch = 3.6
    for (let x = Math.floor((left - height) / pitch) * pitch; x < right; x += pitch) {
      if (way === 'fore') doc.moveTo(x, bottom).lineTo(x + height, top)
      else doc.moveTo(x, top).lineTo(x + height, bottom)
    }
    doc.stroke().restore()
    doc
      .lineWidth(outline)
      .strokeColor('#000')
      .polygon(...points)
      .stroke()
  }
  doc.fillColor('#000')
}
