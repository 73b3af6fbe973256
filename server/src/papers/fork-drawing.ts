/** The line drawing of an air fork on the hand-over page: laid down, crown to the right, to scale along and across. */
import { drawHatched } from './hatching.ts'
import type { Paper, Point } from './paper.ts'

/** What the drawing needs of the sheet, all [mm]; `sag` and `spacers` as set. */
export type ForkDrawing = {
  stanchion: number
  bore: number
  shaft: number
  stroke: number
  freeLength: number
  negativeLength: number
  positiveLength: number
  spacerLength: number
  spacers: number
  sag: number | null
  /** Bath oil poured into each leg [mm³]; null where none is known. */
  oil: { spring: number | null; damper: number | null }
}

/** Where the settings are set, in the units of the page. */
export type SettingPoints = {
  valve: Point
  spacers: Point
  rebound: Point
  compression: Point
  wiper: Point
  ring: Point
  oil: Point
}

// What no sheet gives: the drawing's own lengths [mm].
const own = { floor: 22, clearance: 22, overlap: 140, crown: 36, head: 17, piston: 16, pocket: 5 }
const [leftEdge, rightEdge] = [74, 726]

/** Draws both legs with their axes at the two heights; the distance of the legs alone is shortened, by break lines. */
export function drawFork(paper: Paper, fork: ForkDrawing, damperAxis: number, springAxis: number): SettingPoints {
  const end = own.floor + fork.stroke + own.clearance
  const lip = end + own.overlap
  const crown = lip + fork.freeLength
  const chambers = fork.negativeLength + own.piston + fork.positiveLength
  const top = Math.max(crown + own.crown, end + own.pocket + own.head + chambers + 14)
  // A short air spring stands higher in the stanchion, its cap still in the crown.
  const cap = Math.max(end + own.pocket + own.head + chambers, crown - 12)
  const springHead = cap - chambers - own.head
  const scale = (rightEdge - leftEdge) / top
  const x = (u: number) => leftEdge + u * scale
  const [outer, inner, rod] = [fork.stanchion / 2, fork.bore / 2, fork.shaft / 2]
  const { doc } = paper

  const between = (): void => {
    const [high, low] = [damperAxis + outer * scale, springAxis - outer * scale]
    const middle = (high + low) / 2
    for (const [from, to] of [
      [high, middle - 5],
      [middle + 5, low],
    ] as const) {
      const web: Point[] = [
        [x(crown), from],
        [x(top - 4), from],
        [x(top - 4), to],
        [x(crown), to],
      ]
      drawHatched(doc, [web], 'back', 0.8)
      breakLine(paper, x(crown) - 5, x(top - 4) + 5, from === high ? to : from)
    }
    const arch = x(lip - 12)
    doc.lineWidth(0.7)
    for (const [edge, way] of [
      [high, 1],
      [low, -1],
    ] as const) {
      const to = middle - way * 4
      const from = edge + way * 8
      doc
        .moveTo(arch - 30, from)
        .bezierCurveTo(arch - 22, from + way * 16, arch, from + way * 8, arch, to)
        .stroke()
      doc
        .moveTo(arch + 8, from - way * 3)
        .bezierCurveTo(arch + 22, from + way * 6, arch + 22, to - way * 8, arch + 20, to)
        .stroke()
      breakLine(paper, arch - 5, arch + 25, to)
    }
  }

  // Broken strokes parallel to the surface, and the level as a line: down is left.
  const bath = (axis: number, volume: number | null): number => {
    const wall = outer + 1.2
    const depth = (volume ?? 0) / (Math.PI * (wall ** 2 - rod ** 2))
    if (depth === 0) return 0
    for (let u = own.floor - 3; u < own.floor - 6 + depth; u += 3)
      for (const side of [-1, 1])
        paper.line([x(u), axis + side * (rod + 1) * scale], [x(u), axis + side * (wall - 1) * scale], 0.5, [4, 2])
    const level = own.floor - 6 + depth
    for (const side of [-1, 1])
      paper.line([x(level), axis + side * rod * scale], [x(level), axis + side * wall * scale], 0.9)
    return depth
  }

  const leg = (axis: number, head: number, capFace: number, oil: number | null, insides: () => void): void => {
    const ring = (half: readonly Point[], look: 'fore' | 'back', line: number) =>
      drawHatched(
        doc,
        [half.map(([u, r]): Point => [x(u), axis - r * scale]), half.map(([u, r]): Point => [x(u), axis + r * scale])],
        look,
        line,
      )
    doc.lineWidth(Math.max(1.8, (outer - inner) * scale))
    for (const side of [-1, 1]) {
      const y = axis + side * ((outer + inner) / 2) * scale
      doc.moveTo(x(end), y).lineTo(x(top), y).stroke()
    }
    const wall = outer + 1.2
    ring(
      [
        [0, rod],
        [0, outer - 3],
        [4, outer + 2],
        [14, outer + 4.5],
        [lip - 48, outer + 4.5],
        [lip - 30, outer + 7.5],
        [lip - 2, outer + 7.5],
        [lip, outer + 5],
        [lip, wall],
        [own.floor, wall],
        [own.floor - 6, rod + 3],
        [own.floor - 6, rod],
      ],
      'fore',
      1,
    )
    ring(
      [
        [crown, outer + 0.8],
        [crown, outer + 6],
        [crown + 4, outer + 8],
        [top - 3, outer + 8],
        [top, outer + 6],
        [top, outer + 0.8],
      ],
      'back',
      1,
    )
    const black = (u0: number, u1: number, r0: number, r1: number) => {
      for (const side of [-1, 1]) doc.rect(x(u0), axis + side * r0 * scale, (u1 - u0) * scale, side * (r1 - r0) * scale)
      doc.fill('#000')
    }
    black(lip - 7, lip + 2, outer + 0.4, outer + 4)
    black(lip - 16, lip - 11, outer + 0.4, outer + 3)
    ring(
      [
        [head, rod],
        [head, inner],
        [head + own.head, inner],
        [head + own.head, rod],
      ],
      'back',
      0.8,
    )
    ring(
      [
        [capFace, 0],
        [capFace, inner],
        [top + 4, inner],
        [top + 4, 0],
      ],
      'back',
      1,
    )
    bath(axis, oil)
    insides()
    paper.line([x(-10), axis], [x(top + 12), axis], 0.4, [9, 3])
  }
  const rodTo = (axis: number, to: number, half: number) => {
    doc
      .lineWidth(0.9)
      .rect(x(-5), axis - half * scale, (to + 5) * scale, 2 * half * scale)
      .fillAndStroke('#fff', '#000')
  }
  const block = (axis: number, from: number, to: number, half: number, look: 'fore' | 'back') =>
    drawHatched(
      doc,
      [
        [
          [x(from), axis - half * scale],
          [x(to), axis - half * scale],
          [x(to), axis + half * scale],
          [x(from), axis + half * scale],
        ],
      ],
      look,
      0.9,
    )
  const plain = (axis: number, from: number, to: number, half: number) => {
    doc
      .lineWidth(1)
      .roundedRect(x(from), axis - half * scale, (to - from) * scale, 2 * half * scale, 2)
      .fillAndStroke('#fff', '#000')
    doc.fillColor('#000')
  }

  between()
  const damperHead = end + own.pocket
  const headTo = damperHead + own.head
  leg(damperAxis, damperHead, top - 22, fork.oil.damper, () => {
    rodTo(damperAxis, headTo + 40, 4)
    block(damperAxis, headTo + 30, headTo + 44, inner - 0.5, 'fore')
    plain(damperAxis, -16, -4, 8)
    plain(damperAxis, top + 4, top + 11, 12)
  })
  const piston = springHead + own.head + fork.negativeLength
  leg(springAxis, springHead, cap, fork.oil.spring, () => {
    rodTo(springAxis, piston, rod)
    block(springAxis, piston, piston + own.piston, inner - 0.5, 'fore')
    for (let n = 0; n < fork.spacers; n += 1)
      block(springAxis, cap - (n + 1) * fork.spacerLength, cap - n * fork.spacerLength - 1, inner - 2, 'fore')
    plain(springAxis, -10, -4, 6)
    plain(springAxis, top + 4, top + 12, 4)
    if (fork.sag !== null)
      for (const side of [-1, 1]) doc.circle(x(lip + fork.sag), springAxis + side * (outer + 1) * scale, 2).fill('#000')
  })
  const below = springAxis + outer * scale
  return {
    valve: [x(top + 8), springAxis],
    spacers: [x(cap - (Math.max(1, fork.spacers) * fork.spacerLength) / 2), springAxis - (inner / 2) * scale],
    rebound: [x(-10), damperAxis + 8 * scale],
    compression: [x(top + 8), damperAxis - 12 * scale],
    wiper: [x(lip), below],
    ring: [x(lip + (fork.sag ?? 0)), below],
    oil: [x(own.floor), springAxis + ((outer + rod) / 2) * scale],
  }
}

function breakLine(paper: Paper, from: number, to: number, y: number): void {
  const middle = (from + to) / 2
  paper.doc
    .lineWidth(0.7)
    .moveTo(from, y)
    .lineTo(middle - 4, y)
    .lineTo(middle - 1.5, y - 4)
    .lineTo(middle + 1.5, y + 4)
  paper.doc
    .lineTo(middle + 4, y)
    .lineTo(to, y)
    .stroke()
}
