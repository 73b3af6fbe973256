import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readPlacedJson } from './json-places.ts'

describe('JSON with places', () => {
  // Oracle: the JSON.parse of the JavaScript engine (ECMA-262, which takes the grammar of RFC 8259).
  it('reads what JSON.parse reads', () => {
    fc.assert(
      fc.property(fc.json(), fc.constantFrom(0, 1, 2), (text, indent) => {
        const value: unknown = JSON.parse(text)
        const written = JSON.stringify(value, null, indent)
        const read = readPlacedJson(written)
        expect(read.ok && JSON.stringify(read.value)).toBe(JSON.stringify(value))
      }),
      { numRuns: 500, seed: 7 },
    )
  })

  it('refuses what JSON.parse refuses, and takes no text that it does not', () => {
    const letters = fc.constantFrom(...'{}[]:,"\\ \n0123456789-+.eEtruefalsn\u0001/'.split(''))
    fc.assert(
      fc.property(fc.array(letters, { maxLength: 14 }), (parts) => {
        const text = parts.join('')
        let takes = true
        try {
          JSON.parse(text)
        } catch {
          takes = false
        }
        const read = readPlacedJson(text)
        // A name written twice is the one thing refused beyond the grammar.
        if (read.ok || !read.came.endsWith('a second time')) expect(read.ok).toBe(takes)
      }),
      { numRuns: 5000, seed: 11 },
    )
  })

  const text = '{\n  "a": 1,\n  "b": {\n    "c": "d",\r\n    "e": [true, null]\n  }\n}\n'
  it.each([
    ['', 1, 1],
    ['a', 2, 8],
    ['b', 3, 8],
    ['b.c', 4, 10],
    ['b.e', 5, 10],
    ['b.e.1', 5, 17],
    ['b.missing', 3, 8],
    ['missing.too', 1, 1],
  ])('%j begins on line %d, column %d', (path, line, column) => {
    const read = readPlacedJson(text)
    expect(read.ok && read.placeOf(path)).toEqual({ line, column })
  })

  it.each([
    ['{\n  "a": 1,\n}', 3, 1, '}', 'the name of a field in "…"'],
    ['{"a" 1}', 1, 6, '1}', ': after "a"'],
    ['{"a": 1 "b": 2}', 1, 9, '"b":', ', or } after a value'],
    ['{"a": NaN}', 1, 7, 'NaN}', 'a value'],
    ['{"a": 01}', 1, 8, '1}', ', or } after a value'],
    ["{'a': 1}", 1, 2, "'a':", 'the name of a field in "…"'],
    ['{"a": "b\n"}', 1, 7, '"b', 'a text that ends in "'],
    ['{"a": 1', 1, 8, 'the end of the text', ', or } after a value'],
    ['', 1, 1, 'the end of the text', 'a value'],
    ['{} {}', 1, 4, '{}', 'nothing more'],
    ['{"a": 1, "a": 2}', 1, 10, '"a" a second time', 'every name once'],
    [`${'['.repeat(60)}`, 1, 52, '[', 'no more than 50'],
  ])('says where %j goes wrong', (wrong, line, column, came, allowed) => {
    const read = readPlacedJson(wrong)
    if (read.ok) throw new Error('it was taken')
    expect(read.place).toEqual({ line, column })
    expect(read.came.startsWith(came)).toBe(true)
    expect(read.allowed).toContain(allowed)
  })

  it('passes over a byte order mark and never touches a prototype', () => {
    expect(readPlacedJson('\ufeff{"a": 1}')).toMatchObject({ ok: true, value: { a: 1 } })
    const read = readPlacedJson('{"__proto__": {"x": 1}}')
    expect(read.ok && Reflect.get(Object(read.value), 'x')).toBeUndefined()
  })
})
