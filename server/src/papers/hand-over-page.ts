import { say } from '@legwork/trade'
import encodeQR from 'qr'
import type { HandOverPage } from './hand-over-page-data.ts'
import { type Ink, openPaper, type Paper } from './paper.ts'
import { drawSection, type RuledRow, type Section, sectionHeight } from './ruled-section.ts'
import { drawSettingsAsRows, drawSettingsOnFork } from './set-on-drawing.ts'
import { drawSourceWord } from './source-mark.ts'
import { clip, drawLines, wrap } from './wrap.ts'

const book: Ink = { face: 'book', size: 12.5 }
const small: Ink = { face: 'book', size: 12 }
const [left, right, column, second] = [52, 742, 328, 414]
const [foot, gap] = [966, 10]

/**
 * Prints the hand-over page: A4, one page, black on white. Lists too long for their place end in "and N more in the
 * book"; cautions are never cut, they take their place first.
 * @throws RangeError for cautions that would fill the page
 */
export function renderHandOverPage(page: HandOverPage): Promise<Uint8Array> {
  const paper = openPaper({ title: `Hand-over ${page.job}`, author: page.workshop, width: 794, height: 1123 })
  drawTitleBlock(paper, page)
  const heading: Ink = { face: 'lettering-600', size: 24 }
  const taken = paper.text(heading, say('paper.head.settings'), left, 161)
  const asked = page.asked === null ? say('paper.asked.none') : say('paper.asked', { asked: page.asked })
  paper.text(book, clip(paper, book, asked, right - left - taken - 20), right, 161, 'end')
  const top = drawSettings(paper, page)
  const bottom = drawCautions(paper, page.cautions, top)
  const sections = sectionsOf(page)
  drawSections(paper, sections, top, bottom - 30)
  drawKey(paper, sections.flat(), bottom - 9)
  drawSigning(paper, page)
  drawCutOff(paper, page)
  return paper.finish()
}

function drawTitleBlock(paper: Paper, page: HandOverPage): void {
  paper.line([left, 45], [right, 45], 2)
  paper.line([left, 115], [right, 115], 1)
  for (const x of [322, 478, 644]) paper.line([x, 45], [x, 115], 1)
  const cell = (x: number, width: number, over: string, value: string, size: number, limit: number) => {
    const ink: Ink = { face: 'lettering-600', size }
    paper.text(small, clip(paper, small, over, width), x, 63)
    drawLines(paper, wrap(paper, [{ ink, text: value }], width, limit), x, 82, 19)
  }
  const by = page.receivedBy ? say('paper.handed-over-by', { name: page.handedOverBy }) : say('paper.not-handed-over')
  cell(left, 262, by, page.workshop, 17, 2)
  const over =
    page.riderMass === null ? say('paper.head.rider') : say('paper.head.rider-mass', { mass: page.riderMass })
  cell(334, 136, over, page.rider ?? say('paper.no-rider'), 15, 2)
  cell(490, 148, say('paper.head.unit'), page.unit, 15, 2)
  cell(656, right - 656, say('paper.head.job'), page.job, 15, 1)
  paper.text(book, clip(paper, book, page.date, right - 656), 656, 101)
}

/** Answers the y where the sections begin. */
function drawSettings(paper: Paper, page: HandOverPage): number {
  if (page.settings.length === 0) paper.text(book, say('paper.no-settings'), left, 184)
  if (page.drawing) {
    drawSettingsOnFork(paper, page.drawing, page.settings)
    return page.settings.length === 0 ? 454 : 544
  }
  return drawSettingsAsRows(paper, page.settings, 174) + (page.settings.length === 0 ? 30 : 18)
}

function sectionsOf(page: HandOverPage): [Section, Section | null][] {
  const plain = (list: readonly string[]) => list.map((what) => ({ what }))
  const or = <Row>(rows: readonly Row[], none: Row) => (rows.length > 0 ? rows : [none])
  const next = page.next ? say('paper.next', page.next) : say('paper.no-next')
  const declined = page.declined.map((service) => ({ what: say('paper.said-no', { service }) }))
  const kept = [...(page.carriedOver ? [say('paper.carried-over')] : []), ...page.waivers, ...page.notes]
  const pairs = page.beforeAfter.map(({ what, before, after, source }) => ({
    what,
    figure: `${before} → ${after}`,
    source,
  }))
  const rows: [Section, Section | null][] = [
    [
      { head: say('paper.head.found'), rows: or<RuledRow>(page.found, { what: say('paper.no-found') }) },
      { head: say('paper.head.done'), rows: or<RuledRow>(page.done, { what: say('paper.no-done') }) },
    ],
    [
      { head: say('paper.head.before-after'), rows: or<RuledRow>(pairs, { what: say('paper.no-before-after') }) },
      page.holdsAir === null ? null : { head: say('paper.head.holds-air'), rows: [{ what: page.holdsAir }] },
    ],
    [
      {
        head: say('paper.head.next'),
        rows: [{ what: next, source: page.next ? 'common-practice' : null }, ...declined],
      },
      { head: say('paper.head.ride'), rows: or(plain(page.beforeYouRide), { what: say('paper.no-ride') }) },
    ],
  ]
  const notes: Section = { head: say('paper.head.notes'), rows: plain(kept) }
  if (kept.length === 0) return rows
  // The notes take the free half beside "before and after", else a row of their own.
  const free = rows[1]
  if (free && free[1] === null) free[1] = notes
  else rows.push([notes, null])
  return rows
}

function drawSections(paper: Paper, rows: readonly [Section, Section | null][], top: number, bottom: number): void {
  const needs = rows.map(([a, b]) => Math.max(sectionHeight(paper, a, column), b ? sectionHeight(paper, b, column) : 0))
  const heights = shareOut(needs, bottom - top - gap * (rows.length - 1))
  // Room to spare goes between the rows, as far as it still reads as one page.
  const spare = bottom - top - gap * (rows.length - 1) - heights.reduce((sum, height) => sum + height, 0)
  const apart = gap + Math.min(22, Math.max(0, spare / rows.length))
  let y = top
  for (const [index, [a, b]] of rows.entries()) {
    const height = heights[index] ?? 0
    drawSection(paper, a, left, y, column, height)
    if (b) drawSection(paper, b, second, y, column, height)
    y += height + apart
  }
}

/** What the marks beside the figures mean, those that are on the page. */
function drawKey(paper: Paper, sections: readonly (Section | null)[], y: number): void {
  const used = new Set(sections.flatMap((section) => section?.rows ?? []).flatMap((row) => row.source ?? []))
  let x = left
  for (const source of used) x += drawSourceWord(paper, source, x, y, small) + 18
}

/** Small needs are met whole; what is left over is shared alike among the large ones. */
function shareOut(needs: readonly number[], room: number): number[] {
  const shares = needs.map(() => 0)
  let [left, open] = [room, needs.length]
  for (const [index, need] of [...needs.entries()].sort((a, b) => a[1] - b[1])) {
    shares[index] = Math.min(need, left / open)
    left -= shares[index] ?? 0
    open -= 1
  }
  return shares
}

/** Cautions stand above the signatures, as small as they must to be there all; answers the y of their rule. */
function drawCautions(paper: Paper, cautions: readonly string[], top: number): number {
  for (let size = 13; size >= 8; size -= 0.5) {
    const lines = wrap(paper, [{ ink: { face: 'book-600', size }, text: cautions.join(' ') }], right - left)
    const y = foot - 4 - lines.length * size * 1.3
    if (y < top + 240) continue
    paper.line([left, y], [right, y], 1)
    drawLines(paper, lines, left, y + size * 1.35, size * 1.3)
    return y
  }
  throw new RangeError(`${cautions.length} cautions do not fit on the hand-over page; write them shorter`)
}

function drawSigning(paper: Paper, page: HandOverPage): void {
  const [a, b] = page.receivedBy
    ? [
        say('paper.sign.workshop', { name: page.handedOverBy }),
        page.carriedOver
          ? say('paper.sign.carried', { time: page.receivedBy.time })
          : say('paper.sign.collected', page.receivedBy),
      ]
    : [say('paper.sign.workshop-open'), say('paper.sign.collected-open')]
  for (const [x, text] of [
    [left, a],
    [266, b],
  ] as const) {
    paper.line([x, 1050], [x + 190, 1050], 1)
    drawLines(paper, wrap(paper, [{ ink: small, text }], 190, 2), x, 1066, 15)
  }
}

/** The label to cut off: pressure, settings and the code of the unit's card; no name on it. */
function drawCutOff(paper: Paper, page: HandOverPage): void {
  const [x, y, width, height] = [480, 972, 262, 112]
  paper.doc.lineWidth(1).dash(4, { space: 3 }).rect(x, y, width, height).stroke().undash()
  const pressure = page.settings.find((setting) => setting.place === 'pressure')
  const big: Ink = { face: 'lettering-500', size: pressure ? 21 : 15 }
  paper.text(big, clip(paper, big, pressure?.figure ?? say('paper.no-pressure'), 142), x + 14, y + 30)
  const others = page.settings.filter((setting) => setting.place !== 'pressure' && setting.place !== 'bath-oil')
  const words = [
    ...(pressure?.detail ? [pressure.detail] : []),
    ...others.map(({ place, figure }) => say(`paper.short.${place}`, { figure })),
    `${page.job}, ${page.date}`,
  ].join(', ')
  drawLines(paper, wrap(paper, [{ ink: { face: 'book', size: 11.5 }, text: words }], 140, 5), x + 14, y + 47, 14)
  drawCode(paper, page.address, right - 104, y + 6, 100)
  paper.text({ face: 'book-italic', size: 11 }, say('paper.cut'), x, y + height + 13)
}

function drawCode(paper: Paper, address: string, x: number, y: number, size: number): void {
  const rows = encodeQR(address, 'raw', { ecc: 'medium', border: 4 })
  const cell = size / rows.length
  for (const [r, row] of rows.entries())
    for (const [c, dark] of row.entries()) if (dark) paper.doc.rect(x + c * cell, y + r * cell, cell, cell)
  paper.doc.fill('#000')
}
