import PDFDocument from 'pdfkit'
import { type Face, fileFor, fontFile } from './type-faces.ts'
import { boxLabel, type Run, runsOf } from './type-runs.ts'
import './words.ts'

export type Ink = { face: Face; size: number }
export type Align = 'start' | 'end' | 'middle'
export type Point = readonly [number, number]

/** A PDF page measured in the units of the drawing: 794 to the width of A4 (96 to the inch), y downwards. */
export type Paper = {
  doc: PDFKit.PDFDocument
  width(ink: Ink, text: string): number
  /** Sets one line with its baseline at y; answers the width. */
  text(ink: Ink, text: string, x: number, y: number, align?: Align): number
  line(from: Point, to: Point, width: number, dash?: readonly number[]): void
  /** Goes on to a fresh page. */
  nextPage(): void
  /** Draws on every page there is, once it is known how many there are; the first is 1. */
  onEveryPage(draw: (page: number, of: number) => void): void
  finish(): Promise<Uint8Array>
}

export type PaperFacts = { title: string; author: string; width: number; height: number }

const toPoints = 72 / 96

/** Opens a document on its first page. Sizes in 1/96 inch; every font used is embedded as a subset. */
export function openPaper(facts: PaperFacts): Paper {
  const doc = new PDFDocument({
    size: [facts.width * toPoints, facts.height * toPoints],
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    lang: 'en',
    displayTitle: true,
    info: { Title: facts.title, Author: facts.author, Creator: 'Legwork' },
  })
  const chunks: Uint8Array[] = []
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk))
  const done = new Promise<Uint8Array>((resolve, reject) => {
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))))
    doc.on('error', reject)
  })
  const registered = new Set<string>()
  const use = (file: string, size: number) => {
    if (!registered.has(file)) {
      doc.registerFont(file, fontFile(file))
      registered.add(file)
    }
    doc.font(file).fontSize(size)
  }
  const nextPage = () => {
    doc.addPage()
    doc.scale(toPoints)
  }
  nextPage()

  const widths = new Map<string, number>()
  const runWidth = (run: Run, size: number): number => {
    if (run.file === null) return boxWidth(run.text, size)
    const key = `${run.file}|${size}|${run.text}`
    const known = widths.get(key)
    if (known !== undefined) return known
    use(run.file, size)
    const found = doc.widthOfString(run.text, { features: featuresOf(run.file) })
    widths.set(key, found)
    return found
  }
  const width = (ink: Ink, text: string) =>
    runsOf(ink.face, text).reduce((sum, run) => sum + runWidth(run, ink.size), 0)

  const box = (character: string, size: number, x: number, y: number) => {
    const wide = boxWidth(character, size)
    const label = boxLabel(character)
    const small = size * 0.36
    doc
      .lineWidth(size * 0.045)
      .rect(x + size * 0.06, y - size * 0.76, wide - size * 0.12, size * 0.86)
      .stroke()
    const half = Math.ceil(label.length / 2)
    use(fileFor('lettering', 48) ?? 'dejavu-sans', small)
    for (const [row, part] of [label.slice(0, half), label.slice(half)].entries()) {
      const at = x + (wide - doc.widthOfString(part)) / 2
      doc.text(part, at, y - size * (0.42 - row * 0.37), { baseline: 'alphabetic', lineBreak: false })
    }
  }

  return {
    doc,
    width,
    text(ink, text, x, y, align = 'start') {
      const runs = runsOf(ink.face, text)
      const total = runs.reduce((sum, run) => sum + runWidth(run, ink.size), 0)
      let at = align === 'end' ? x - total : align === 'middle' ? x - total / 2 : x
      for (const run of runs) {
        if (run.file === null) box(run.text, ink.size, at, y)
        else {
          use(run.file, ink.size)
          doc.text(run.text, at, y, { baseline: 'alphabetic', lineBreak: false, features: featuresOf(run.file) })
        }
        at += runWidth(run, ink.size)
      }
      return total
    },
    line(from, to, thick, dash) {
      doc.save().lineWidth(thick)
      if (dash) doc.dash(dash[0] ?? 1, { space: dash[1] ?? 1 })
      doc
        .moveTo(...from)
        .lineTo(...to)
        .stroke()
        .restore()
    },
    nextPage,
    onEveryPage(draw) {
      const { start, count } = doc.bufferedPageRange()
      for (let index = 0; index < count; index += 1) {
        doc.switchToPage(start + index)
        draw(index + 1, count)
      }
    },
    finish() {
      doc.end()
      return done
    },
  }
}

function boxWidth(character: string, size: number): number {
  return size * (boxLabel(character).length > 4 ? 0.92 : 0.72)
}

// Tabular figures in the lettering; the book face keeps its own.
function featuresOf(file: string): PDFKit.Mixins.OpenTypeFeatures[] {
  return file.startsWith('national-park') ? ['kern', 'tnum'] : ['kern', 'liga']
}
