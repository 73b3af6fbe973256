import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const read = (path: string): string => readFileSync(new URL(path, import.meta.url), 'utf8')
const css = read('./tokens.css')

/** The tokens of one block of the style sheet, by its selector. */
function tokensOf(selector: string): Record<string, string> {
  const from = css.indexOf(`${selector} {`)
  if (from < 0) throw new Error(`tokens.css has no block ${selector}`)
  const block = css.slice(from, css.indexOf('}', from))
  return Object.fromEntries([...block.matchAll(/--([a-z-]+):\s*([^;]+);/g)].map(([, name, value]) => [name, value]))
}

// WCAG 2.2, "relative luminance" and "contrast ratio".
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

const themes = { Day: tokensOf(':root'), Night: tokensOf(':root[data-theme="dark"]') }
const grounds = ['paper', 'leaf', 'edge']
/** WCAG 2.2, 1.4.3 (text) and 1.4.11 (what a control is told by). */
const least: Readonly<Record<string, number>> = { ink: 4.5, graphite: 4.5, faint: 4.5, hand: 4.5, line: 3 }

const rows = Object.entries(least).flatMap(([name, wanted]) =>
  Object.entries(themes).map(([theme, tokens]) => {
    const ratios = grounds.map((ground) => contrast(tokens[name] ?? '', tokens[ground] ?? ''))
    return { name, theme, wanted, ratios }
  }),
)

describe('contrast', () => {
  it('is what WCAG computes for its own ends of the scale', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10)
    // From memory: #767676 on white is the darkest-known grey that just passes 4.5.
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
  })

  it.each(rows)('$name by $theme on every ground', ({ ratios, wanted }) => {
    for (const ratio of ratios) expect(ratio).toBeGreaterThanOrEqual(wanted)
  })

  it('of what is written on a main action and on a chosen row', () => {
    for (const tokens of Object.values(themes)) {
      expect(contrast(tokens['on-hand'] ?? '', tokens.hand ?? '')).toBeGreaterThanOrEqual(4.5)
      expect(contrast(tokens.ink ?? '', tokens['hand-wash'] ?? '')).toBeGreaterThanOrEqual(4.5)
      expect(contrast(tokens.hand ?? '', tokens['hand-wash'] ?? '')).toBeGreaterThanOrEqual(4.5)
    }
  })

  it('stands in docs/design.md as it is', () => {
    const table = rows.map(({ name, theme, ratios }) => {
      const colour = themes[theme === 'Day' ? 'Day' : 'Night'][name]
      return `${name} ${theme} ${colour} ${ratios.map((ratio) => ratio.toFixed(1)).join(' ')}`
    })
    const said = [
      ...read('../../../docs/design.md').matchAll(
        /^\| (\w+) +\| (Day|Night) +\| `(#\w+)` +\| ([\d.]+) +\| ([\d.]+) +\| ([\d.]+) +\|$/gm,
      ),
    ]
    expect(said.map((row) => row.slice(1).join(' '))).toEqual(table)
  })

  it('safety colours are the same in both themes, on a ground of their own', () => {
    const safety = Object.keys(themes.Day).filter((name) => name.startsWith('safety-'))
    expect(safety.length).toBeGreaterThanOrEqual(5)
    expect(safety.filter((name) => name in themes.Night)).toEqual([])
  })

  it('print is black on white: no wash, no violet', () => {
    const print = tokensOf('  :root:root')
    const colours = Object.keys(themes.Night).filter((name) => themes.Night[name]?.startsWith('#'))
    expect(colours.filter((name) => !['#fff', '#000'].includes(print[name] ?? ''))).toEqual([])
    for (const name of Object.keys(least)) expect(print[name]).toBe('#000')
    for (const name of grounds) expect(print[name]).toBe('#fff')
  })

  it('sizes stand in docs/design.md as they are', () => {
    const phone = tokensOf('@media (max-width: 639px) {\n  :root')
    const said = [...read('../../../docs/design.md').matchAll(/^\| `--([\w-]+)` +\| ([\d.]+) +\| ([\d.]+) +\|/gm)]
    const names = Object.keys(themes.Day).filter((name) => /^(figure|size)-/.test(name))
    expect(said.map(([, name]) => name)).toEqual(names)
    for (const [, name = '', tablet, small] of said)
      expect([tablet, small]).toEqual(
        [themes.Day[name], phone[name] ?? themes.Day[name]].map((one) => one?.replace('px', '')),
      )
  })

  it('the machine’s dark theme is the chosen one', () => {
    expect(tokensOf('  :root:not([data-theme="light"])')).toEqual(themes.Night)
  })
})
