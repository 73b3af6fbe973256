/** What stands in a section drawing: its outlines as the page holds them, and the volumes they stand for. */
import type { Page } from 'playwright-core'

type Point = readonly [x: number, y: number]

export interface DrawnSection {
  /** Where the drawing says it stands [m]. */
  stroke: number
  /** Every outline by the name of its part, in the drawing's order. */
  outlines: ReadonlyMap<string, readonly string[]>
}

/** The first section on the page, straight from the DOM. */
export async function drawnSection(page: Page): Promise<DrawnSection> {
  const read = await page
    .locator('svg.cutaway')
    .first()
    .evaluate((svg) => ({
      stroke: Number(svg.getAttribute('data-stroke')),
      paths: [...svg.querySelectorAll('[data-shape]')].map((part): [string, string] => {
        const path = part.tagName === 'path' ? part : part.querySelector('path')
        return [part.getAttribute('data-shape') ?? '', path?.getAttribute('d') ?? '']
      }),
    }))
  const outlines = new Map<string, string[]>()
  for (const [name, path] of read.paths) outlines.set(name, [...(outlines.get(name) ?? []), path])
  return { stroke: read.stroke, outlines }
}

/** The closed outlines of a path of straight lines. */
function polygons(path: string): Point[][] {
  return path
    .split('M')
    .filter((part) => part.trim() !== '')
    .map((part) =>
      part
        .replace('Z', '')
        .split('L')
        .map((pair): Point => {
          const [x = Number.NaN, y = Number.NaN] = pair.trim().split(/\s+/).map(Number)
          return [x, y]
        }),
    )
}

/** Where a leg's axis is drawn, down the page [mm]. */
export function axisOf({ outlines }: DrawnSection, leg: 'left' | 'right'): number {
  const [line] = polygons(outlines.get(`axis.${leg}`)?.[0] ?? '')
  const y = line?.[0]?.[1]
  if (y === undefined) throw new Error(`the axis of the ${leg} leg is not drawn`)
  return y
}

/**
 * Volume of a part turned about an axis, from the half that is drawn above it: Σ π/3·Δx·(r₀² + r₀·r₁ + r₁²), the frustums
 * under its edges; going round, what lies between the part and the axis cancels [m³].
 */
export function turnedVolume({ outlines }: DrawnSection, name: string, axis: number): number {
  let sum = 0
  for (const path of outlines.get(name) ?? [])
    for (const outline of polygons(path)) {
      const above = outline.filter(([, y]) => y <= axis + 1e-9)
      if (above.length === 0 || outline.every(([, y]) => y >= axis - 1e-9)) continue
      const whole = above.length < outline.length
      const [first, last] = [above[0], above.at(-1)]
      // A part without a seam along the axis is drawn in one: its upper half is closed on the axis.
      const half: Point[] = whole && first && last ? [...above, [last[0], axis], [first[0], axis]] : above
      let turned = 0
      half.forEach(([x0, y0], index) => {
        const [x1, y1] = half[(index + 1) % half.length] ?? [x0, y0]
        const [r0, r1] = [axis - y0, axis - y1]
        turned += (Math.PI / 3) * (x1 - x0) * (r0 * r0 + r0 * r1 + r1 * r1)
      })
      sum += Math.abs(turned)
    }
  return sum / 1e9
}

/** Names whose outlines are not the same in both: drawn otherwise, only here, or only there. */
export function changedNames(one: DrawnSection, other: DrawnSection): string[] {
  const names = new Set([...one.outlines.keys(), ...other.outlines.keys()])
  const same = (name: string) => one.outlines.get(name)?.join() === other.outlines.get(name)?.join()
  return [...names].filter((name) => !same(name)).sort()
}
