import { calculations } from '@legwork/contract/calculations/index.ts'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readInput, writeInput } from './input-notation.ts'

const json = fc.dictionary(
  fc.string({ maxLength: 8 }),
  fc.jsonValue({ maxDepth: 4, noUnicodeString: false }),
) as fc.Arbitrary<Record<string, unknown>> // JSON values, of which JSON has no own type

describe('an input in an address', () => {
  it('reads as a person would write it', () => {
    expect(writeInput({ kind: 'air', bore: '32 mm', legs: [{ oil: '10 ml' }, { oil: '12 ml' }] })).toBe(
      'kind:air,bore:32_mm,legs:(!(oil:10_ml),(oil:12_ml',
    )
  })

  it.each(Object.values(calculations))('$name keeps its example, in signs an address may have', ({ example }) => {
    const text = writeInput(example)
    // RFC 3986, 3.4: query = *( pchar / "/" / "?" ), without those that applications give a meaning.
    expect(text).toMatch(/^(?:[A-Za-z0-9\-._~!$()*,;:@/]|%[0-9A-F]{2})*$/)
    expect(readInput(text)).toEqual(example)
    expect(new URL(`https://a.example/?input=${text}`).search).toBe(`?input=${text}`)
  })

  it('keeps whatever JSON can hold', () => {
    fc.assert(
      fc.property(json, (input) => {
        const copy: unknown = JSON.parse(JSON.stringify(input))
        expect(readInput(writeInput(input))).toEqual(copy)
      }),
      { numRuns: 500, seed: 20_260_503 },
    )
  })

  it('still reads what another program has escaped once more', () => {
    const input = { a: '5 (N)', b: [1, '2', null, true, ''] }
    expect(readInput(encodeURIComponent(decodeURIComponent(writeInput(input))))).toEqual(input)
  })

  it('reads plain JSON too', () => {
    expect(readInput('%7B%22a%22%3A%5B1%2C%225%20N%22%5D%7D')).toEqual({ a: [1, '5 N'] })
    expect(readInput('{"a":')).toBeNull()
  })

  it.each(['a', 'a:b)c', 'a:(b', '%', 'a:01', '('.repeat(40), `a:${'('.repeat(40)}`, 'a:b:c'])(
    'never throws: %s',
    (text) => {
      expect(() => readInput(text)).not.toThrow()
    },
  )

  it.each(['a', '%', 'a:b:c', `a:${'(x:'.repeat(40)}`])('says that it can’t read %s', (text) => {
    expect(readInput(text)).toBeNull()
  })

  it('takes a name that objects have from the start as any other', () => {
    const input = readInput('~_~_proto~_~_:(polluted:1),load:5_N')
    expect(Object.hasOwn(input ?? {}, '__proto__')).toBe(true)
    expect(Reflect.get({}, 'polluted')).toBeUndefined()
  })
})
