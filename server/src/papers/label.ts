import { say } from '@legwork/trade'
import encodeQR from 'qr'
import { type Ink, openPaper } from './paper.ts'
import { clip, drawLines, wrap } from './wrap.ts'

/** No rider's name, no personal data: the label stays on the unit. */
export type Label = {
  job: string
  date: string
  pressure: string | null
  lines: string[]
  next: string | null
  address: string
}

const book: Ink = { face: 'book', size: 13 }

/** The small label for the unit, 70 × 30 mm: pressure, settings, next service and the code of the unit's card. */
export function renderLabel(label: Label): Promise<Uint8Array> {
  const paper = openPaper({ title: `Label ${label.job}`, author: 'Legwork', width: 264.6, height: 113.4 })
  const big: Ink = { face: 'lettering-500', size: 19 }
  paper.text(big, clip(paper, big, label.pressure ?? say('paper.no-pressure'), 145), 8, 26)
  const words = [...label.lines, `${label.job}, ${label.date}`, label.next ?? say('paper.label.no-next')].join('; ')
  drawLines(paper, wrap(paper, [{ ink: book, text: words }], 145, 4), 8, 46, 16)
  const rows = encodeQR(label.address, 'raw', { ecc: 'medium', border: 4 })
  const cell = 100 / rows.length
  for (const [r, row] of rows.entries())
    for (const [c, dark] of row.entries()) if (dark) paper.doc.rect(158 + c * cell, 7 + r * cell, cell, cell)
  paper.doc.fill('#000')
  return paper.finish()
}
