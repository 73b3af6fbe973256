import { say } from '@legwork/trade'
import { type Ink, openPaper, type Paper } from './paper.ts'
import { drawLines, wrap } from './wrap.ts'

export type Notice = {
  workshop: string
  job: string
  date: string
  unit: string
  rider: string | null
  found: string[]
  /** JPEGs of what was found; null for one that is not in the shop's book. */
  photos: readonly (Uint8Array | null)[]
  by: string
}

const book: Ink = { face: 'book', size: 16 }
const bold: Ink = { face: 'book-600', size: 16 }
const bottom = 960

const gap = 15
/** At most so many are printed; the others stay in the book. */
const mostPhotos = 3

/** One large, two or three beside each other; 4 : 3 is the room of each. */
function roomOf(count: number): { width: number; height: number } {
  const width = count === 1 ? 380 : (690 - gap * (count - 1)) / count
  return { width, height: width * 0.75 }
}

/** Prints photos from y on and answers where the text goes on. */
function drawPhotos(paper: Paper, photos: readonly (Uint8Array | null)[], y: number): number {
  const here = photos.filter((photo) => photo !== null)
  const printed = here.slice(0, mostPhotos)
  const { width, height } = roomOf(printed.length)
  for (const [index, photo] of printed.entries())
    paper.doc.image(Buffer.from(photo), 52 + index * (width + gap), y - 12, { fit: [width, height] })
  const below = printed.length > 0 ? y + height + 20 : y
  const others = photos.length - printed.length
  if (others === 0) return below
  paper.text(book, say('paper.notice.photos-not-printed', { n: others }), 52, below)
  return below + 22
}

/** The written notice for a stopped job: what was found, that it was not rebuilt, a line to sign. A4, one page. */
export function renderNotice(notice: Notice): Promise<Uint8Array> {
  const paper = openPaper({ title: `Notice ${notice.job}`, author: notice.workshop, width: 794, height: 1123 })
  const write = (ink: Ink, text: string, y: number) => drawLines(paper, wrap(paper, [{ ink, text }], 690, 8), 52, y, 22)
  paper.text({ face: 'lettering-600', size: 26 }, say('paper.notice.title'), 52, 80)
  const { workshop, job, date, unit, rider, by } = notice
  const head = { workshop, job, date, unit, rider: rider ?? say('paper.notice.no-rider') }
  const printed = Math.min(mostPhotos, notice.photos.filter((photo) => photo !== null).length)
  const room = notice.photos.length > 0 ? 42 + (printed > 0 ? roomOf(printed).height : 0) : 0
  let y = write(book, say('paper.notice.head', head), 116)
  y = write(bold, say('paper.notice.found'), y + 20)
  const found = notice.found.length > 0 ? notice.found : [say('paper.notice.found-none')]
  for (const [index, item] of found.entries()) {
    if (y > bottom - 260 - room) {
      y = write(book, say('paper.more', { n: found.length - index }), y)
      break
    }
    y = write(book, item, y)
  }
  y = drawPhotos(paper, notice.photos, y + 8)
  y = write(bold, say('paper.notice.not-rebuilt'), y + 16)
  write(book, say('paper.notice.danger'), y)
  paper.line([52, 1030], [380, 1030], 1)
  paper.line([414, 1030], [742, 1030], 1)
  const workshopSigns = say('paper.sign.workshop', { name: by })
  drawLines(paper, wrap(paper, [{ ink: book, text: workshopSigns }], 328, 2), 52, 1050, 20)
  paper.text(book, say('paper.notice.signed'), 414, 1050)
  return paper.finish()
}
