import { say } from '@legwork/trade'
import type { Letterhead } from './letterhead.ts'
import { type Ink, openPaper, type Paper } from './paper.ts'
import { drawTitleBlock, numberPages, shopCell } from './title-block.ts'
import { drawLines, wrap } from './wrap.ts'

export interface Notice {
  shop: Letterhead
  job: string
  date: string
  unit: string
  serial: string | null
  rider: string | null
  found: string[]
  /** JPEGs of what was found; null for one that is not in the shop's book. */
  photos: readonly (Uint8Array | null)[]
  by: string | null
}

const book: Ink = { face: 'book', size: 16 }
const bold: Ink = { face: 'book-600', size: 16 }
const small: Ink = { face: 'book', size: 12 }
const [left, right, lead, pageTop, pageBottom] = [52, 742, 22, 96, 1080]
/** What the sentences on what it means and the two lines to sign take at the foot of the last page. */
const closing = 230
const gap = 15
/** At most so many are printed; the others stay in the book. */
const mostPhotos = 3

/** One large, two or three beside each other; 4 : 3 is the room of each. */
function roomOf(count: number): { width: number; height: number } {
  const width = count === 1 ? 380 : (right - left - gap * (count - 1)) / count
  return { width, height: count === 0 ? 0 : width * 0.75 }
}

/** The first photos in a row from y on; answers where the text goes on. */
function drawPhotos(paper: Paper, photos: readonly Uint8Array[], y: number): number {
  const { width, height } = roomOf(photos.length)
  for (const [index, photo] of photos.entries())
    paper.doc.image(Buffer.from(photo), left + index * (width + gap), y - 12, { fit: [width, height] })
  return y + height + 20
}

/** The written notice for a stopped job: what was found, that it was not rebuilt, a line to sign. A4; nothing is left out. */
export function renderNotice(notice: Notice): Promise<Uint8Array> {
  const { shop, job, date, unit, serial, rider, by, photos } = notice
  const paper = openPaper({
    title: say('paper.title.notice', { job }),
    author: shop.name,
    width: 794,
    height: 1123,
  })
  const head = drawTitleBlock(paper, [
    shopCell(shop, by ? say('paper.notice.by', { name: by }) : date, 0.39),
    { over: say('paper.head.rider'), name: rider ?? say('paper.notice.no-rider'), under: [], share: 0.23, size: 15 },
    {
      over: say('paper.head.unit'),
      name: unit,
      under: [serial === null ? null : say('paper.serial', { serial })],
      share: 0.23,
      size: 15,
    },
    { over: say('paper.head.job'), name: job, under: [date], share: 0.15, size: 15 },
  ])
  paper.text({ face: 'lettering-600', size: 28 }, say('paper.notice.title'), left, head + 58)
  let y = head + 104
  const turnFor = (room: number): void => {
    if (y + room <= pageBottom) return
    paper.nextPage()
    y = pageTop
  }
  const write = (ink: Ink, text: string, room = 0): void => {
    for (const line of wrap(paper, [{ ink, text }], right - left)) {
      turnFor(room)
      y = drawLines(paper, [line], left, y, lead)
    }
  }
  write(bold, say('paper.notice.found'))
  for (const item of notice.found.length > 0 ? notice.found : [say('paper.notice.found-none')]) {
    write(book, item)
    y += 6
  }
  const printed = photos.filter((photo) => photo !== null).slice(0, mostPhotos)
  if (printed.length > 0) {
    turnFor(roomOf(printed.length).height)
    y = drawPhotos(paper, printed, y + 8)
  }
  const others = photos.length - printed.length
  if (others > 0) write(book, say('paper.notice.photos-not-printed', { n: others }))
  y += 16
  write(bold, say(shop.home ? 'paper.notice.home' : 'paper.notice.not-rebuilt'), closing)
  write(book, say('paper.notice.danger'), closing - 60)
  const signs = [
    ...(shop.home ? [] : [by === null ? say('paper.sign.workshop-open') : say('paper.sign.workshop', { name: by })]),
    ...(shop.home ? [] : [say('paper.notice.signed')]),
  ]
  for (const [index, text] of signs.entries()) {
    const x = index === 0 ? left : 414
    paper.line([x, 1030], [x + 328, 1030], 1)
    drawLines(paper, wrap(paper, [{ ink: small, text }], 328), x, 1048, 15)
  }
  numberPages(paper, say('paper.head.of-page', { job, unit, workshop: shop.name }))
  return paper.finish()
}
