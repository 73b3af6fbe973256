import type { Ink, Paper } from './paper.ts'

/** One word in its ink; a line is a list of them. */
type Piece = { ink: Ink; text: string }
export type Rich = readonly Piece[]
export type Line = { pieces: Piece[]; width: number }

// A figure and its measure are joined by a no-break space and stay on one line.
const breakAfter = /(?<=[^\S\u00a0\u202f])/u

/**
 * Breaks text at spaces into lines no wider than `width`; a word wider than the line is cut, never clipped.
 * `limit` keeps that many lines and ends the last one with an ellipsis.
 */
export function wrap(paper: Paper, rich: Rich, width: number, limit = Number.POSITIVE_INFINITY): Line[] {
  const lines: Line[] = [{ pieces: [], width: 0 }]
  for (const piece of rich) {
    for (const word of piece.text.split(breakAfter)) {
      for (const part of cut(paper, piece.ink, word, width)) put(paper, lines, { ink: piece.ink, text: part }, width)
    }
  }
  const kept = lines.filter((line) => line.pieces.length > 0)
  return kept.length <= limit ? kept : shorten(paper, kept.slice(0, limit), width)
}

function put(paper: Paper, lines: Line[], piece: Piece, width: number): void {
  const line = lines.at(-1)
  if (!line) return
  if (line.pieces.length > 0 && line.width + paper.width(piece.ink, piece.text.trimEnd()) > width) {
    lines.push({ pieces: [piece], width: paper.width(piece.ink, piece.text) })
    return
  }
  const last = line.pieces.at(-1)
  // Words of one ink are joined again: kerning, and the word order of right-to-left names, need the whole run.
  if (last && last.ink === piece.ink) last.text += piece.text
  else line.pieces.push({ ...piece })
  line.width = line.pieces.reduce((sum, part) => sum + paper.width(part.ink, part.text), 0)
}

function cut(paper: Paper, ink: Ink, word: string, width: number): string[] {
  if (paper.width(ink, word.trimEnd()) <= width) return [word]
  const parts: string[] = []
  let part = ''
  for (const character of word) {
    if (part !== '' && paper.width(ink, part + character) > width) {
      parts.push(part)
      part = ''
    }
    part += character
  }
  return part === '' ? parts : [...parts, part]
}

function shorten(paper: Paper, lines: Line[], width: number): Line[] {
  const last = lines.at(-1)
  const end = last?.pieces.at(-1)
  if (!last || !end) return lines
  const before = last.pieces.slice(0, -1).reduce((sum, part) => sum + paper.width(part.ink, part.text), 0)
  end.text = clip(paper, end.ink, `${end.text.trimEnd()} …`, width - before)
  return lines
}

/** The text itself where it fits, else as much of it as fits with an ellipsis. */
export function clip(paper: Paper, ink: Ink, text: string, width: number): string {
  if (paper.width(ink, text) <= width) return text
  const letters = Array.from(text)
  while (letters.length > 1 && paper.width(ink, `${letters.join('').trimEnd()}…`) > width) letters.pop()
  return `${letters.join('').trimEnd()}…`
}

/** Draws wrapped lines with the first baseline at y; answers the y below the last line. */
export function drawLines(paper: Paper, lines: readonly Line[], x: number, y: number, lead: number): number {
  for (const [row, line] of lines.entries()) {
    let at = x
    for (const piece of line.pieces) at += paper.text(piece.ink, piece.text, at, y + row * lead)
  }
  return y + lines.length * lead
}
