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
  const say = (ink: Ink, text: string, y: number) => drawLines(paper, wrap(paper, [{ ink, text }], 690, 8), 52, y, 22)
  paper.text({ face: 'lettering-600', size: 26 }, 'Stopped: do not ride this unit', 52, 80)
  let y = say(
    book,
    `${notice.workshop}. Job ${notice.job}, ${notice.date}. ${notice.unit}. ${notice.rider ?? 'No rider named'}.`,
    116,
  )
  y = say(bold, 'What was found', y + 20)
  const found =
    notice.found.length > 0
      ? notice.found
      : ['What was found was not written down: ask the workshop before you take it.']
  for (const [index, item] of found.entries()) {
    if (y > bottom - 260) {
      y = say(book, `and ${found.length - index} more in the book`, y)
      break
    }
    y = say(book, item, y)
  }
  y = say(bold, 'The unit was not rebuilt and is handed back in parts.', y + 16)
  say(book, 'Riding it can cause a fall with serious injury or death. The maker’s sheet decides on replacement.', y)
  paper.line([52, 1030], [380, 1030], 1)
  paper.line([414, 1030], [742, 1030], 1)
  drawLines(paper, wrap(paper, [{ ink: book, text: `for the workshop: ${notice.by}` }], 328, 2), 52, 1050, 20)
  paper.text(book, 'read and understood: name, date, signature', 414, 1050)
  return paper.finish()
}
