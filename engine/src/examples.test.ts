/** Runs the example of every docblock: the expression gives what stands behind it, to the printed digits. */
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { describe, expect, it } from 'vitest'

const here = import.meta.dirname
const files = readdirSync(here, { recursive: true, encoding: 'utf8' }).filter(
  (name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && !name.endsWith('index.ts'),
)
const examples = files.flatMap((name) =>
  [...readFileSync(join(here, name), 'utf8').matchAll(/@example (.+) \/\/ (.+)$/gm)].map((match) => {
    const [, expression = '', printed = ''] = match
    return { name: relative('.', name), expression, printed: printed.replace(/ \*\/$/, '') }
  }),
)

/** Half of the last printed digit, at least one part in 10⁹. */
function tolerance(printed: string, value: number): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e')
  const after = mantissa.split('.')[1]?.length ?? 0
  const last = 10 ** (Number(exponent) - after)
  return Math.max(last / 2, 1e-9 * Math.abs(value))
}

describe('examples in docblocks', () => {
  it('are there', () => {
    expect(examples.length).toBeGreaterThan(10)
  })

  it.each(examples)('$name: $expression', async ({ name, expression, printed }) => {
    const room: Record<string, unknown> = await import(`./${name}`)
    // The examples are our own comments; running them is the point.
    const run = new Function(...Object.keys(room), `return (${expression})`)
    const value: unknown = run(...Object.values(room))
    const expected: unknown = JSON.parse(printed)
    if (typeof expected === 'number') {
      expect(typeof value).toBe('number')
      expect(Math.abs(Number(value) - expected)).toBeLessThanOrEqual(tolerance(printed, expected))
    } else {
      expect(typeof value === 'string' ? value.replaceAll('\u00a0', ' ') : value).toEqual(expected)
    }
  })
})
