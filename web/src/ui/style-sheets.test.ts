/** What docs/design.md says of every style sheet, asked of every style sheet. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('..', import.meta.url))
const sheets = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.css'))
  .map((path) => ({ path, css: readFileSync(join(root, path), 'utf8').replaceAll(/\/\*[\s\S]*?\*\//g, '') }))

/** Every declaration of these properties: where it stands, its selector, its value. */
const declared = (property: RegExp): { path: string; selector: string; property: string; value: string }[] =>
  sheets.flatMap(({ path, css }) =>
    [...css.matchAll(/([^{};]+)\{([^{}]*)\}/g)].flatMap(([, selector = '', block = '']) =>
      [...block.matchAll(/([\w-]+)\s*:\s*([^;]+)/g)].flatMap(([, name = '', value = '']) =>
        property.test(name) ? [{ path, selector: selector.trim(), property: name, value: value.trim() }] : [],
      ),
    ),
  )
const told = (found: { path: string; selector: string; value: string }[]): string[] =>
  found.map(({ path, selector, value }) => `${path} ${selector}: ${value}`)

describe('style sheets', () => {
  it('are read: there are many, and the tokens are among them', () => {
    expect(sheets.length).toBeGreaterThan(30)
    expect(declared(/^--paper$/).length).toBeGreaterThan(2)
  })

  it('write nothing under 13 px', () => {
    const small = declared(/^(font|font-size|--size-.*)$/).filter(({ value }) => {
      const [, px] = /(?:^|\s)([\d.]+)px/.exec(value) ?? []
      return px !== undefined && Number(px) < 13
    })
    expect(told(small)).toEqual([])
  })

  it('take their colours from the tokens', () => {
    const own = declared(/./).filter(
      ({ path, value }) => path !== 'ui/tokens.css' && /#[0-9a-f]{3,8}\b|\b(rgb|hsl|oklch)a?\(/i.test(value),
    )
    // The ground under a leaf is the page, darkened alike in both themes.
    expect(told(own).filter((one) => !one.startsWith('ui/dialog.css'))).toEqual([])
  })

  it('draw no soft shadow, no gradient but hatching, no rounder corner than 2 px', () => {
    const soft = declared(/^(box-shadow|text-shadow|filter|backdrop-filter)$/).filter(
      ({ value }) => !/^(inset )?(0 )?(\d+px |0 ){2,3}[\d.]*(px )?var\(--\w[\w-]*\)$/.test(value) && value !== 'none',
    )
    expect(told(soft)).toEqual([])
    expect(
      told(declared(/./).filter(({ value }) => /(?<!repeating-)\b(linear|radial|conic)-gradient/.test(value))),
    ).toEqual([])
    const round = declared(/radius$/).filter(
      ({ property, value }) => property !== '--radius' && !['var(--radius)', '0', '50%'].includes(value),
    )
    expect(told(round)).toEqual([])
    expect(declared(/^--radius$/).map(({ value }) => value)).toEqual(['2px', '0'])
  })

  it('put no text in capitals, but a first letter', () => {
    const capitals = declared(/^text-transform$/).filter(({ selector }) => !selector.endsWith('::first-letter'))
    expect(told(capitals)).toEqual([])
  })

  it('move nothing for longer than a gate’s leaf takes, and nothing where less motion is asked for', () => {
    const slow = declared(/^(transition|animation)$/).filter(({ value }) =>
      [...value.matchAll(/([\d.]+)(ms|s)\b/g)].some(([, time, unit]) => Number(time) * (unit === 's' ? 1000 : 1) > 160),
    )
    expect(told(slow)).toEqual([])
    const base = sheets.find(({ path }) => path === 'ui/base.css')?.css ?? ''
    expect(base).toMatch(
      /prefers-reduced-motion: reduce\) \{[^}]*animation-duration: 0s !important;[^}]*transition-duration: 0s/,
    )
  })
})
