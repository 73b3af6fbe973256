import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../', import.meta.url))
const rooms = ['engine', 'trade', 'drawing', 'contract', 'server', 'cli', 'web', 'e2e', 'benchmarks', 'scripts']

interface Place {
  readonly path: string
  readonly isFolder: boolean
}

function placesUnder(folder: string): Place[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((item) => {
    if (['node_modules', 'dist', 'dist.new'].includes(item.name)) return []
    const path = join(folder, item.name)
    const place = { path: relative(root, path), isFolder: item.isDirectory() }
    return item.isDirectory() ? [place, ...placesUnder(path)] : [place]
  })
}

const places = rooms.flatMap((room) => placesUnder(join(root, room)))
const sources = places.filter(({ path, isFolder }) => !isFolder && /\.(ts|tsx|mjs)$/.test(path))

describe('the tree', () => {
  it('is seen', () => expect(sources.length).toBeGreaterThan(100))

  it('has no room for odds and ends', () => {
    const odds = /(^|\/)(utils?|helpers?|common|misc|shared)(\.|\/|$)/
    expect(places.filter(({ path }) => odds.test(path)).map(({ path }) => path)).toEqual([])
  })

  it('names its sources in kebab-case', () => {
    const kebab = /(^|\/)[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*\.(ts|tsx|mjs)$/
    expect(sources.filter(({ path }) => !kebab.test(path)).map(({ path }) => path)).toEqual([])
  })

  // The measures of CONTRIBUTING.md: most under 90 lines, 250 is long, 400 a reason to split
  it('keeps its files short', () => {
    const lengths = sources
      .map(({ path }) => ({ path, lines: readFileSync(join(root, path), 'utf8').split('\n').length - 1 }))
      .sort((a, b) => a.lines - b.lines)
    const at = (share: number) => lengths[Math.floor(share * (lengths.length - 1))]?.lines
    expect(lengths.filter(({ lines }) => lines > 400)).toEqual([])
    expect(at(0.5)).toBeLessThanOrEqual(90)
    expect(at(0.9)).toBeLessThanOrEqual(250)
  })
})
