import type { Point } from './shape.ts'

/** A quarter of an ellipse that starts square to the axis and ends along it: how castings close. */
export function roundedEnd(from: Point, to: Point, points = 10): Point[] {
  return Array.from({ length: points }, (_, i) => {
    const turn = ((i / (points - 1)) * Math.PI) / 2
    return [to[0] - (to[0] - from[0]) * Math.cos(turn), from[1] + (to[1] - from[1]) * Math.sin(turn)]
  })
}

/** A soft step from one radius to another. */
export function softStep(from: Point, to: Point, points = 9): Point[] {
  return Array.from({ length: points }, (_, i) => {
    const share = i / (points - 1)
    const eased = share * share * (3 - 2 * share)
    return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * eased]
  })
}

/** The part of a line (along never falling) between two places; its ends lie exactly there. */
export function lineBetween(line: readonly Point[], from: number, to: number): Point[] {
  const inside = line.filter(([u]) => u > from && u < to)
  return [[from, acrossAt(line, from, 'after')], ...inside, [to, acrossAt(line, to, 'before')]]
}

/** Distance from the axis at a place; where the line steps, the side tells which of both. */
export function acrossAt(line: readonly Point[], at: number, side: 'before' | 'after'): number {
  let found = line[0]?.[1] ?? 0
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1], line[i]]
    if (!a || !b) continue
    const beyond = side === 'after' ? a[0] > at : a[0] >= at
    if (beyond) break
    const share = b[0] === a[0] ? 1 : Math.min(1, (at - a[0]) / (b[0] - a[0]))
    found = a[1] + share * (b[1] - a[1])
  }
  return found
}

/** Half section between an outer and an inner line, from one place to another. */
export function sectionBetween(outer: readonly Point[], inner: readonly Point[], from: number, to: number): Point[] {
  return [...lineBetween(outer, from, to), ...lineBetween(inner, from, to).reverse()]
}

/** The place between low and high where a rising function reaches its goal; the nearer end where it never does. */
export function whereReaches(rising: (at: number) => number, goal: number, low: number, high: number): number {
  let [a, b] = [low, high]
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2
    if (rising(middle) < goal) a = middle
    else b = middle
  }
  return (a + b) / 2
}
