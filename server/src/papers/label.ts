import { say } from '@legwork/trade'
import { drawCode } from './code.ts'
import { type Ink, openPaper } from './paper.ts'
import { clip, drawLines, wrap } from './wrap.ts'

/** No rider's name, no personal data: the label stays on the unit. */
export interface Label {
  job: string
  date: string
  pressure: string | null
  /** Sprung by a coil: it says so in place of a pressure. */
  coil: boolean
  /** At which temperature. */
  at: string | null
  lines: string[]
  next: string | null
  address: string
}

const [left, width] = [8, 148]

/** The small label for the unit, 70 × 30 mm: pressure, settings, next service and the code of the unit's card. */
export function renderLabel(label: Label): Promise<Uint8Array> {
  const title = say('paper.title.label', { job: label.job })
  const paper = openPaper({ title, author: 'Legwork', width: 264.6, height: 113.4 })
  const big: Ink = { face: 'lettering-500', size: 22 }
  const small: Ink = { face: 'book', size: 12 }
  const taken = paper.text(
    big,
    clip(paper, big, label.pressure ?? say(label.coil ? 'paper.coil' : 'paper.no-pressure'), width),
    left,
    26,
  )
  if (label.at) paper.text(small, clip(paper, small, label.at, width - taken - 5), left + taken + 5, 26)
  const rows = [label.lines.join(', '), `${label.job}, ${label.date}`, label.next ?? say('paper.label.no-next')]
  const room = 5
  // What is set comes first; smaller letters before anything is left out.
  for (const size of [13, 12, 11, 10]) {
    const ink: Ink = { face: 'book', size }
    const lines = rows.filter((row) => row !== '').flatMap((text) => wrap(paper, [{ ink, text }], width))
    if (lines.length > room && size > 10) continue
    drawLines(paper, lines.slice(0, room), left, 45, size * 1.2)
    break
  }
  drawCode(paper, label.address, 158, 7, 100)
  return paper.finish()
}
