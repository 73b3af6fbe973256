import { type SourceKind, say } from '@legwork/trade'
import type { HandOverPage, SectionPair } from './hand-over-page-data.ts'
import { sectionsOf } from './hand-over-sections.ts'
import { type Ink, openPaper, type Paper } from './paper.ts'
import {
  beginningHeight,
  type Density,
  dense,
  drawSection,
  roomy,
  type Section,
  sectionHeight,
} from './ruled-section.ts'
import { drawSettingsAsRows, drawSettingsOnFork } from './set-on-drawing.ts'
import { drawSignOff, signOffTop } from './sign-off.ts'
import { drawTitleBlock, numberPages, shopCell } from './title-block.ts'
import { drawLines, wrap } from './wrap.ts'

const book: Ink = { face: 'book', size: 12.5 }
const [left, right, column, second] = [52, 742, 328, 414]
const [gap, closeGap, mostGap, pageTop, pageBottom] = [12, 7, 30, 84, 1082]

/**
 * Prints the hand-over page: A4, black on white, on one page where the lists leave it whole; longer ones go on over the
 * page, under a head and with page numbers. Nothing is left out.
 */
export function renderHandOverPage(page: HandOverPage): Promise<Uint8Array> {
  const title = say('paper.title.hand-over', { job: page.job })
  const paper = openPaper({ title, author: page.shop.name, width: 794, height: 1123 })
  const top = drawSettings(paper, page, drawHead(paper, page)) + 8
  const pairs = sectionsOf(page)
  const used = sourcesOn(page, pairs)
  drawSections(paper, pairs, top, signOffTop(paper, page))
  drawSignOff(paper, page, used)
  numberPages(paper, say('paper.head.of-page', { job: page.job, unit: page.unit, workshop: page.shop.name }))
  return paper.finish()
}

/** Title block, heading, and what was asked for; answers the y below them. */
function drawHead(paper: Paper, page: HandOverPage): number {
  const { shop, receivedBy, handedOverBy } = page
  const given = shop.home ? 'paper.done-by' : 'paper.handed-over-by'
  const by = receivedBy && handedOverBy ? say(given, { name: handedOverBy }) : say('paper.not-handed-over')
  const serial = page.serial === null ? null : say('paper.serial', { serial: page.serial })
  const bottom = drawTitleBlock(paper, [
    shopCell(shop, by, 0.37),
    {
      over: say('paper.head.rider'),
      name: page.rider ?? say('paper.no-rider'),
      under: [page.riderKit],
      share: 0.26,
      size: 15,
    },
    { over: say('paper.head.unit'), name: page.unit, under: [serial], share: 0.23, size: 15 },
    { over: say('paper.head.job'), name: page.job, under: [page.date], share: 0.14, size: 15 },
  ])
  const y = bottom + 38
  const taken = paper.text({ face: 'lettering-600', size: 24 }, say('paper.head.settings'), left, y)
  const asked = page.asked === null ? say('paper.asked.none') : say('paper.asked', { asked: page.asked })
  if (paper.width(book, asked) <= right - left - taken - 20) {
    paper.text(book, asked, right, y, 'end')
    return y + 4
  }
  return drawLines(paper, wrap(paper, [{ ink: book, text: asked }], right - left), left, y + 22, 16) - 4
}

/** Answers the y below the settings. */
function drawSettings(paper: Paper, page: HandOverPage, y: number): number {
  if (page.settings.length === 0) paper.text(book, say('paper.no-settings'), left, y + 22)
  const top = page.settings.length === 0 ? y + 30 : y + 6
  if (page.drawing) return drawSettingsOnFork(paper, page.drawing, page.settings, top)
  return drawSettingsAsRows(paper, page.settings, top)
}

/** The marks that the pages carry, in the order of the eye. */
function sourcesOn(page: HandOverPage, pairs: readonly SectionPair[]): SourceKind[] {
  const rows = pairs.flat().flatMap((section) => section?.rows ?? [])
  return [...new Set([...page.settings, ...rows].flatMap(({ source }) => source ?? []))]
}

function heightsOf(paper: Paper, pairs: readonly SectionPair[], density: Density): number[] {
  return pairs.map((pair) =>
    Math.max(...pair.map((section) => (section ? sectionHeight(paper, section, column, density) : 0))),
  )
}

/** Draws the pairs down to the sign-off, closer where that keeps them on the page; longer ones take further pages. */
function drawSections(paper: Paper, pairs: readonly SectionPair[], top: number, end: number): void {
  const spareOf = (density: Density, between: number) =>
    end - top - heightsOf(paper, pairs, density).reduce((sum, height) => sum + height + between, -between)
  const close = spareOf(roomy, gap) < 0 && spareOf(dense, closeGap) >= 0
  const [density, least] = close ? [dense, closeGap] : [roomy, gap]
  const spare = spareOf(density, least)
  // Room to spare goes between the rows, as far as it still reads as one page.
  const apart = spare < 0 ? gap : Math.min(mostGap, least + spare / pairs.length)
  let y = top
  for (const pair of pairs) y = drawPair(paper, pair, y, density) + apart
  // The sign-off stands at the foot of the last page.
  if (y - apart > end) paper.nextPage()
}

/** Both halves of a pair, on as many pages as they take; answers the y below. */
function drawPair(paper: Paper, pair: SectionPair, from: number, density: Density): number {
  let open = pair.flatMap((section, index): { section: Section; x: number }[] =>
    section ? [{ section, x: index === 0 ? left : second }] : [],
  )
  let y = from
  const turn = (): void => {
    paper.nextPage()
    y = pageTop
  }
  const beginning = Math.max(...open.map(({ section }) => beginningHeight(paper, section, column, density)))
  if (y + beginning > pageBottom) turn()
  for (;;) {
    const room = pageBottom - y
    const at = { y, width: column, room }
    const drawn = open.map(({ section, x }) => ({ x, ...drawSection(paper, section, { x, ...at }, density) }))
    open = drawn.flatMap(({ x, rest }) => (rest ? [{ section: rest, x }] : []))
    if (open.length === 0) return y + Math.max(...drawn.map(({ height }) => height))
    turn()
  }
}
