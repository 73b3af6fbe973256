/** The foot of the hand-over page: what the marks mean, cautions, who signed, and the label to cut off. */
import { type SourceKind, say } from '@legwork/trade'
import { drawCode } from './code.ts'
import type { HandOverPage } from './hand-over-page-data.ts'
import type { Ink, Paper } from './paper.ts'
import { drawSourceWord } from './source-mark.ts'
import { clip, drawLines, type Line, wrap } from './wrap.ts'

const small: Ink = { face: 'book', size: 12 }
const [left, right, foot] = [52, 742, 966]
/** The key above the rule of the cautions. */
const keyHeight = 30

interface Cautions {
  bold: readonly Line[]
  plain: readonly Line[]
  size: number
}

function cautionsOf(paper: Paper, page: HandOverPage): Cautions {
  const { terms } = page.shop
  const { length } = [...page.cautions, terms ?? ''].join(' ')
  // Many cautions are set smaller before they take a page of their own.
  const size = length > 1600 ? 10.5 : 12.5
  const set = (face: 'book' | 'book-600', text: string) => wrap(paper, [{ ink: { face, size }, text }], right - left)
  const said = terms ? say('paper.terms', { terms }) : null
  return { bold: set('book-600', page.cautions.join(' ')), plain: said ? set('book', said) : [], size }
}

/** How far above the foot of the page the sign-off begins. */
export function signOffTop(paper: Paper, page: HandOverPage): number {
  const { bold, plain, size } = cautionsOf(paper, page)
  return foot - 8 - (bold.length + plain.length) * size * 1.3 - keyHeight
}

/** Draws it at the foot of the page; `used` are the marks of the sources that the pages carry. */
export function drawSignOff(paper: Paper, page: HandOverPage, used: readonly SourceKind[]): void {
  const { bold, plain, size } = cautionsOf(paper, page)
  const top = signOffTop(paper, page) + keyHeight
  let x = left
  for (const source of used) x += drawSourceWord(paper, source, x, top - 9, small) + 18
  paper.line([left, top], [right, top], 1)
  const below = drawLines(paper, bold, left, top + size * 1.35, size * 1.3)
  drawLines(paper, plain, left, below, size * 1.3)
  drawSigning(paper, page)
  drawCutOff(paper, page)
}

function signsOf(page: HandOverPage): string[] {
  const { receivedBy, handedOverBy, carriedOver, shop, date } = page
  const name = handedOverBy ?? ''
  if (shop.home) return [receivedBy ? say('paper.sign.home', { name, time: receivedBy.time }) : date]
  if (!receivedBy) return [say('paper.sign.workshop-open'), say('paper.sign.collected-open')]
  const collected = carriedOver
    ? say('paper.sign.carried', { time: receivedBy.time })
    : say('paper.sign.collected', receivedBy)
  return [say('paper.sign.workshop', { name }), collected]
}

function drawSigning(paper: Paper, page: HandOverPage): void {
  for (const [index, text] of signsOf(page).entries()) {
    const x = index === 0 ? left : 266
    paper.line([x, 1050], [x + 190, 1050], 1)
    drawLines(paper, wrap(paper, [{ ink: small, text }], 190, 3), x, 1066, 15)
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
