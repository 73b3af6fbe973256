import { describe, expect, it } from 'vitest'
import { checkInstrument, type InstrumentKind, instrumentFields, instrumentKinds } from './instrument-fields.ts'

/** One of each kind, every field filled. */
function instrument(kind: InstrumentKind): { kind: InstrumentKind; name: string; [field: string]: unknown } {
  const fields = instrumentFields(kind).map(({ name, from, to }) => [name, name === 'low' ? 2 : (from + to) / 2])
  return { kind, name: 'I1', note: null, ...Object.fromEntries(fields) }
}

describe.each(instrumentKinds)('a %s', (kind) => {
  it('is taken with every field in its range', () => {
    expect(checkInstrument(instrument(kind))).toEqual([])
  })

  it('is refused by the name of each field that is wrong', () => {
    expect(checkInstrument({ ...instrument(kind), name: ' ' }).map(({ field }) => field)).toEqual(['name'])
    for (const { name, from, to } of instrumentFields(kind))
      for (const wrong of [undefined, null, 'one', Number.NaN, from - 1, to + 1]) {
        const problems = checkInstrument({ ...instrument(kind), [name]: wrong })
        expect(
          problems.map(({ field }) => field),
          `${name} ${String(wrong)}`,
        ).toContain(name)
        expect(problems.every(({ allowed, next }) => allowed !== '' && next !== '')).toBe(true)
      }
  })
})

it('a wrench has a range that rises', () => {
  const problems = checkInstrument({ ...instrument('wrench'), low: 15, high: 2 })
  expect(problems).toMatchObject([
    { field: 'high', code: 'instrument.range-order', allowed: expect.stringContaining('15 N·m') },
  ])
})
