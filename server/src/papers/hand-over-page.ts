import encodeQR from 'qr'
import type { HandOverPage, PageVerdict } from './hand-over-page-data.ts'
import { type Ink, openPaper, type Paper } from './paper.ts'
import { drawVerdict } from './verdict-mark.ts'
import { clip, drawLines, wrap } from './wrap.ts'

const book: Ink = { face: 'book', size: 12.5 }
const head: Ink = { face: 'lettering-600', size: 15 }
const left = 52
const right = 742
const column = 328

const sourceWords = {
  'makers-sheet': 'maker’s sheet',
  'measured-here': 'measured here',
  'worked-out': 'worked out',
  handbook: 'handbook',
  'common-practice': 'common practice',
  'rider-said': 'rider said',
}
const verdictWords = { pass: 'pass', watch: 'watch', fail: 'fail', 'cannot-tell': 'cannot tell' }

/** Prints the hand-over page: A4, one page, black on white. Lists too long for their place end in "and N more in the book". */
export function renderHandOverPage(page: HandOverPage): Promise<Uint8Array> {
  const paper = openPaper({ title: `Hand-over ${page.job}`, author: page.workshop, width: 794, height: 1123 })
  paper.line([left, 44], [right, 44], 2)
  const title: Ink = { face: 'lettering-600', size: 18 }
  paper.text(title, clip(paper, title, page.workshop, 430), left, 68)
  paper.text(head, clip(paper, head, `${page.job}, ${page.date}`, 240), right, 68, 'end')
  const who = `${page.unit}. ${page.rider ?? 'No rider: the unit came alone'}. Handed over by ${page.handedOverBy}.`
  drawLines(paper, wrap(paper, [{ ink: book, text: who }], 690, 2), left, 88, 16)
  paper.line([left, 112], [right, 112], 1)
  const settings = page.settings.map(
    (s) => `${s.name}: ${s.figure} (${sourceWords[s.source]}${s.detail ? `, ${s.detail}` : ''})`,
  )
  const asked = page.asked === null ? 'What was asked for was not written down.' : `Asked for: “${page.asked}”`
  block(
    paper,
    'Your settings',
    [asked, ...(settings.length ? settings : ['No settings were entered.'])],
    left,
    140,
    690,
    205,
  )
  const found = page.found.map((f) => `${verdictWords[f.verdict]}: ${f.what}, ${f.figure}`)
  block(
    paper,
    'Found',
    found.length ? found : ['Nothing was judged.'],
    left,
    370,
    column,
    165,
    page.found.map((f) => f.verdict),
  )
  const done = page.done.map((d) => `${d.what} ${d.figure}`.trim())
  block(paper, 'Done', done.length ? done : ['No work was entered.'], left + 362, 370, column, 165)
  const pairs = page.beforeAfter.map((b) => `${b.what}: ${b.before} → ${b.after}`)
  block(paper, 'Before and after', pairs.length ? pairs : ['Not measured before and after.'], left, 560, column, 125)
  if (page.holdsAir !== null) block(paper, 'Holds its air', [page.holdsAir], left + 362, 560, column, 125)
  const next = page.next
    ? `${page.next.service} at ${page.next.hours}, about ${page.next.date}.`
    : 'No next service was worked out.'
  const declined = page.declined.map((d) => `You said no to ${d}`)
  block(paper, 'Next', [next, ...declined], left, 710, column, 105)
  block(
    paper,
    'Before you ride',
    page.beforeYouRide.length ? page.beforeYouRide : ['No checks were entered.'],
    left + 362,
    710,
    column,
    105,
  )
  const notes = [...page.cautions, ...page.waivers, ...page.notes]
  if (page.carriedOver) notes.unshift('Carried over from the paper book: not checked step by step.')
  block(paper, 'Cautions and notes', notes.length ? notes : ['None were entered.'], left, 840, 690, 115)
  const signed = page.receivedBy
    ? `Received by ${page.receivedBy.name}, ${page.receivedBy.time}`
    : 'Not yet received: name, time, signature'
  paper.line([left, 1060], [left + 390, 1060], 1)
  drawLines(paper, wrap(paper, [{ ink: book, text: signed }], 390, 1), left, 1076, 16)
  drawCode(paper, page.address, right - 100, 972, 100)
  return paper.finish()
}

function block(
  paper: Paper,
  name: string,
  items: readonly string[],
  x: number,
  y: number,
  width: number,
  height: number,
  verdicts: readonly PageVerdict[] = [],
) {
  paper.text(head, name, x, y)
  paper.line([x, y + 6], [x + width, y + 6], 1)
  const rows = Math.floor((height - 24) / 16)
  let used = 0
  for (const [index, item] of items.entries()) {
    const verdict = verdicts[index]
    const indent = verdict ? 18 : 0
    const lines = wrap(paper, [{ ink: book, text: item }], width - indent, items.length === 1 ? rows : 3)
    const spare = index === items.length - 1 ? 0 : 1
    if (used + lines.length + spare > rows) {
      paper.text(book, `and ${items.length - index} more in the book`, x, y + 24 + used * 16)
      return
    }
    if (verdict) drawVerdict(paper, verdict, x, y + 24 + used * 16)
    drawLines(paper, lines, x + indent, y + 24 + used * 16, 16)
    used += lines.length
  }
}

function drawCode(paper: Paper, address: string, x: number, y: number, size: number) {
  const rows = encodeQR(address, 'raw', { ecc: 'medium', border: 4 })
  const cell = size / rows.length
  for (const [r, row] of rows.entries())
    for (const [c, dark] of row.entries()) if (dark) paper.doc.rect(x + c * cell, y + r * cell, cell, cell)
  paper.doc.fill('#000')
}
