import { say } from '@legwork/trade'
import { type Ink, openPaper } from './paper.ts'
import { drawLines, wrap } from './wrap.ts'

export type Notice = {
  workshop: string
  job: string
  date: string
  unit: string
  rider: string | null
  found: string[]
  by: string
}

const book: Ink = { face: 'book', size: 16 }
const bold: Ink = { face: 'book-600', size: 16 }
const bottom = 960

/** The written notice for a stopped job: what was found, that it was not rebuilt, a line to sign. A4, one page. */
export function renderNotice(notice: Notice): Promise<Uint8Array> {
  const paper = openPaper({ title: `Notice ${notice.job}`, author: notice.workshop, width: 794, height: 1123 })
  const write = (ink: Ink, text: string, y: number) => drawLines(paper, wrap(paper, [{ ink, text }], 690, 8), 52, y, 22)
  paper.text({ face: 'lettering-600', size: 26 }, say('paper.notice.title'), 52, 80)
  const { workshop, job, date, unit, rider, by } = notice
  const head = { workshop, job, date, unit, rider: rider ?? say('paper.notice.no-rider') }
  let y = write(book, say('paper.notice.head', head), 116)
  y = write(bold, say('paper.notice.found'), y + 20)
  const found = notice.found.length > 0 ? notice.found : [say('paper.notice.found-none')]
  for (const [index, item] of found.entries()) {
    if (y > bottom - 260) {
      y = write(book, say('paper.more', { n: found.length - index }), y)
      break
    }
    y = write(book, item, y)
  }
  y = write(bold, say('paper.notice.not-rebuilt'), y + 16)
  write(book, say('paper.notice.danger'), y)
  paper.line([52, 1030], [380, 1030], 1)
  paper.line([414, 1030], [742, 1030], 1)
  const workshopSigns = say('paper.sign.workshop', { name: by })
  drawLines(paper, wrap(paper, [{ ink: book, text: workshopSigns }], 328, 2), 52, 1050, 20)
  paper.text(book, say('paper.notice.signed'), 414, 1050)
  return paper.finish()
}
