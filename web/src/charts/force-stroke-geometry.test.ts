import { describe, expect, it } from 'vitest'
import {
  type Curve,
  curvePath,
  forceAt,
  forceStrokeFrame,
  paperEnd,
  squares,
  strokeByKey,
  strokeUnder,
} from './force-stroke-geometry.ts'

// A straight line, so that every expected number is a sum done by head: 10 N a millimetre.
const straight: Curve = [
  { stroke: 0, force: 0 },
  { stroke: 0.05, force: 500 },
  { stroke: 0.1, force: 1000 },
]
const plot = { left: 20, width: 200, top: 10, height: 100 }
const frame = forceStrokeFrame(plot, 0.1, [straight])

describe('curves', () => {
  it('a force is read off between two points, not beyond the ends', () => {
    expect(forceAt(straight, 0.03)).toBeCloseTo(300, 9)
    expect(forceAt(straight, 0)).toBe(0)
    expect(forceAt(straight, 0.11)).toBeNull()
  })

  it('a missing reading is a gap: no line runs over it and no force is read in it', () => {
    const gap: Curve = [...straight.slice(0, 2), { stroke: 0.075, force: null }, { stroke: 0.1, force: 1000 }]
    expect(forceAt(gap, 0.07)).toBeNull()
    expect(curvePath(frame, gap).match(/M/g)).toHaveLength(2)
  })

  it('the line runs through its points on the paper', () => {
    expect(curvePath(frame, straight)).toBe('M20,110L120,60L220,10')
  })
})

describe('paper', () => {
  it.each([
    [420, 500],
    [1000, 1000],
    [2040, 2500],
    [4300, 5000],
  ])('for %i N it ends at %i N', (highest, end) => {
    expect(paperEnd([[{ stroke: 0, force: highest }]])).toBe(end)
  })

  it('squares begin at nought, heavy ones at round numbers, none beyond the end', () => {
    const lines = squares(0.15, 0.001, 236)
    expect(lines[0]).toEqual({ at: 0, heavy: true })
    expect(lines.filter((line) => line.heavy).map((line) => Math.round(line.at * 1e3))).toEqual([0, 50, 100, 150])
    expect(Math.max(...lines.map((line) => line.at))).toBeLessThanOrEqual(0.15 + 1e-12)
  })
})

describe('grip', () => {
  it('a finger in the middle of the paper is half the stroke, to the nearest step', () => {
    expect(strokeUnder(frame, 120, 0.1, 0.001)).toBe(0.05)
    expect(strokeUnder(frame, 121.3, 0.1, 0.001)).toBe(0.051)
  })

  it('a finger beside the paper stays at its end', () => {
    expect(strokeUnder(frame, -50, 0.1, 0.001)).toBe(0)
    expect(strokeUnder(frame, 900, 0.1, 0.001)).toBe(0.1)
  })

  // Keys of a slider after the WAI-ARIA Authoring Practices, slider pattern.
  it.each([
    ['ArrowRight', 0.031],
    ['ArrowUp', 0.031],
    ['ArrowLeft', 0.029],
    ['ArrowDown', 0.029],
    ['PageUp', 0.04],
    ['PageDown', 0.02],
    ['Home', 0],
    ['End', 0.15],
  ])('%s goes to %f m', (key, to) => {
    expect(strokeByKey(key, 0.03, 0.15, 0.001)).toBe(to)
  })

  it('no key leaves the stroke, and other keys do nothing', () => {
    expect(strokeByKey('ArrowLeft', 0, 0.15, 0.001)).toBe(0)
    expect(strokeByKey('PageUp', 0.148, 0.15, 0.001)).toBe(0.15)
    expect(strokeByKey('a', 0.03, 0.15, 0.001)).toBeNull()
  })
})
