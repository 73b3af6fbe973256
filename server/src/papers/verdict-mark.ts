import type { Paper } from './paper.ts'

export type PageVerdict = 'pass' | 'watch' | 'fail' | 'cannot-tell'

/** Draws a verdict by shape, 11 wide, on a baseline: the more trouble, the more ink. The word stands beside it. */
export function drawVerdict(paper: Paper, verdict: PageVerdict, x: number, y: number): void {
  const { doc } = paper
  const [cx, cy, r] = [x + 5.5, y - 4.5, 5]
  doc.save().lineWidth(1.2)
  if (verdict === 'pass') doc.circle(cx, cy, r).stroke()
  if (verdict === 'cannot-tell') {
    doc.dash(2, { space: 2 }).circle(cx, cy, r).stroke()
    doc.undash().circle(cx, cy, 1.2).fill('#000')
  }
  if (verdict === 'watch') {
    doc.polygon([cx - r, cy], [cx, cy - r], [cx + r, cy], [cx, cy + r]).stroke()
    doc.polygon([cx - r, cy], [cx + r, cy], [cx, cy + r]).fill('#000')
  }
  if (verdict === 'fail') {
    doc.rect(cx - r, cy - r, 2 * r, 2 * r).fill('#000')
    doc
      .lineWidth(1.5)
      .strokeColor('#fff')
      .moveTo(cx - 2.6, cy - 2.6)
      .lineTo(cx + 2.6, cy + 2.6)
    doc
      .moveTo(cx + 2.6, cy - 2.6)
      .lineTo(cx - 2.6, cy + 2.6)
      .stroke()
  }
  doc.restore()
}
