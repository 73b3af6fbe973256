/** The foot of the hand-over page: what the marks mean, cautions, who signed, and the label to cut off. */
import { type SourceKind, say } from '@legwork/trade'
import { drawCode } from './code.ts'
import type { HandOverPage } from './hand-over-page-data.ts'
import type { Ink, Paper } from './paper.ts'
import { drawSourceWord } from './source-mark.ts'
import { clip, drawLines, type Line, wrap } from './wrap.ts'

const small: Ink = { face: 'book', size: 12 }
const [left, right] = [52, 742]
/** The label to cut off stands at the right, cautions and signatures beside it. */
const label = { x: 480, width: 262, height: 112, bottom: 1092 }
const beside = label.x - 20 - left
const lead = 1.28
/** The key above the rule; what is kept free for a hand to sign; where the lines to sign lie. */
const [keyHeight, signing, signedAt] = [28, 34, 1074]

interface Cautions {
  lines: readonly Line[]
  size: number
}

function cautionsOf(paper: Paper, page: HandOverPage): Cautions {
  const { terms } = page.shop
  const said = terms ? ` ${say('paper.terms', { terms })}` : ''
  const words = page.cautions.join(' ')
  // Many cautions are set smaller before they take a page of their own.
  const size = words.length + said.length > 1200 ? 10 : 12.5
  const pieces = [
    { ink: { face: 'book-600' as const, size }, text: words },
    { ink: { face: 'book' as const, size }, text: said },
  ]
  return { lines: wrap(paper, pieces, beside), size }
}

/** How far down the page the sign-off begins. */
export function signOffTop(paper: Paper, page: HandOverPage): number {
  return ruleOf(cautionsOf(paper, page)) - keyHeight
}

/** The rule over cautions and label: as low as both leave it. */
const ruleOf = ({ lines, size }: Cautions): number =>
  Math.min(label.bottom - label.height - 12, signedAt - signing - lines.length * size * lead - 6)

/** Draws it at the foot of the page; `used` are the marks of the sources that the pages carry. */
export function drawSignOff(paper: Paper, page: HandOverPage, used: readonly SourceKind[]): void {
  const cautions = cautionsOf(paper, page)
  const rule = ruleOf(cautions)
  let x = left
  for (const source of used) x += drawSourceWord(paper, source, x, rule - 9, small) + 18
  paper.line([left, rule], [right, rule], 1)
  drawLines(paper, cautions.lines, left, rule + cautions.size * 1.4, cautions.size * lead)
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
    paper.line([x, signedAt], [x + 190, signedAt], 1)
    drawLines(paper, wrap(paper, [{ ink: small, text }], 190), x, signedAt + 15, 15)
  }
}

/** The label to cut off: pressure, settings and the code of the unit's card; no name on it. */
function drawCutOff(paper: Paper, page: HandOverPage): void {
  const { x, width, height, bottom } = label
  const y = bottom - height
  paper.doc.lineWidth(1).dash(4, { space: 3 }).rect(x, y, width, height).stroke().undash()
  const pressure = page.settings.find((setting) => setting.place === 'pressure')
  const big: Ink = { face: 'lettering-500', size: pressure ? 21 : 15 }
  paper.text(
    big,
    clip(paper, big, pressure?.figure ?? say(page.coil ? 'paper.coil' : 'paper.no-pressure'), 142),
    x + 14,
    y + 30,
  )
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
