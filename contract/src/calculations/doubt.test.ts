import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { calculations, doubtInSteps, runCalculation, runDoubt } from './index.ts'

/** Fields that count whole things: a draw between two of them is refused, as it should be. */
const whole = new Set(['points', 'spacers', 'seed', 'draws'])
/** Written as a number, with or without a measure; no date. */
const quantity = /^-?[\d.]+( ?[^\d\s:-].*)?$/

function doubted(value: unknown, key = ''): unknown {
  if (whole.has(key)) return value
  if (typeof value === 'number') return { value, u: Math.abs(value) * 1e-4 }
  if (typeof value === 'string' && quantity.test(value)) {
    return { value, u: value.replace(/^-?[\d.]+/, (number) => String(Math.abs(Number(number)) * 1e-4)) }
  }
  if (Array.isArray(value)) return value.map((inner) => doubted(inner))
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, doubted(inner, name)]))
}

function firstNumber(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return path
  if (value === null || typeof value !== 'object') return null
  for (const [key, inner] of Object.entries(value)) {
    const under = Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`
    const found = firstNumber(inner, under)
    if (found !== null) return found
  }
  return null
}

function outputOf(answer: ReturnType<typeof runCalculation>): Record<string, unknown> {
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors))
  return answer.output
}

// Dates carry no number; ids of signs no doubt.
const without = ['doubt', 'due']

describe.each(Object.values(calculations).filter(({ name }) => !without.includes(name)))('doubt of $name', (one) => {
  it('goes through from every quantity of its example', { timeout: 60_000 }, () => {
    const { units: _units, assumptions: _said, ...plain } = outputOf(runCalculation(one.name, one.example))
    const output = firstNumber(plain) ?? ''
    const input = doubted(one.example)
    const question = { calc: one.name, input, outputs: [output], draws: 100 }
    if (!JSON.stringify(input).includes('"u":')) {
      // Nothing of this question is a quantity: it says that there is no doubt to carry.
      expect(runCalculation('doubt', question)).toMatchObject({ ok: false, errors: [{ code: 'wrong-count' }] })
      return
    }
    const answer = outputOf(runCalculation('doubt', question))[output]
    expect(answer).toMatchObject({ unit: expect.any(String), shares: expect.any(Object) })
    const { low, median, high } = Object(answer)
    expect(low).toBeLessThanOrEqual(median)
    expect(median).toBeLessThanOrEqual(high)
  })
})

describe('errors in common', () => {
  const twice = (shared: object | undefined) => ({
    calc: 'leak-down',
    input: {
      ...calculations['leak-down']?.example,
      start: { reading: { value: '68 psi', u: '0.1 psi', ...shared }, temperature: '20 °C' },
      end: { reading: { value: '66 psi', u: '0.1 psi', ...shared }, temperature: '20 °C', how: 'left' },
    },
    outputs: ['leak'],
  })
  const band = (question: object) => {
    const { low, high } = Object(outputOf(runCalculation('doubt', question)).leak)
    return high - low
  }

  // By hand: a difference of two readings with 0.1 psi of their own is doubtful by 0.1·√2; a gauge that reads 2 psi wrong
  // both times changes nothing of it, one that reads wrong anew each time adds 2·√2.
  it('one gauge read twice: its error leaves the difference', () => {
    const alone = band(twice(undefined))
    expect(band(twice({ shared: { 'gauge 2': '2 psi' } })) / alone).toBeCloseTo(1, 1)
    const anew = (name: string) => ({ value: name === 'start' ? '68 psi' : '66 psi', u: '2.0025 psi' })
    const question = twice(undefined)
    const { start, end } = question.input
    const apart = {
      ...question,
      input: { ...question.input, start: { ...start, reading: anew('start') }, end: { ...end, reading: anew('end') } },
    }
    expect(band(apart) / alone).toBeGreaterThan(15)
  })

  it('is told of in words and has a share of its own', () => {
    const question = {
      calc: 'pump-reading',
      input: {
        volume: '187 ml',
        hoseVolume: '5 ml',
        pressure: { value: '88 psi', shared: { 'pump 3': '1 psi' } },
      },
      outputs: ['reading'],
    }
    const { reading, assumptions } = outputOf(runCalculation('doubt', question))
    expect(reading).toMatchObject({ shares: { pressure: 0, 'pump 3': 1 } })
    expect(assumptions).toContain('The error “pump 3” is one and the same for 1 field: it moves by it.')
  })

  it.each([
    [{ value: '88 psi', shared: {} }, 'input.pressure', 'wrong-form'],
    [{ value: '88 psi', shared: 'pump' }, 'input.pressure', 'wrong-form'],
    [{ value: '88 psi', shared: { pump: '1 mm' } }, 'input.pressure', 'wrong-measure'],
    [{ value: '88 psi', shared: { ' ': '1 psi' } }, 'input', 'does-not-fit'],
    [{ value: '88 psi', shared: { pressure: '1 psi' } }, 'input', 'does-not-fit'],
    [{ value: '88 psi', u: '-1 psi' }, 'input.pressure', 'wrong-form'],
    [{ value: '88 psi', low: '80 psi', high: '85 psi' }, 'input.pressure', 'wrong-form'],
  ])('refuses %j', (pressure, field, code) => {
    const input = { volume: '187 ml', hoseVolume: '5 ml', pressure }
    expect(runCalculation('doubt', { calc: 'pump-reading', input, outputs: ['reading'] })).toMatchObject({
      ok: false,
      errors: [{ field, code }],
    })
  })
})

describe('other spreads than the normal and the rectangle', () => {
  const asked = (pressure: unknown) => ({
    calc: 'pump-reading',
    input: { volume: '187 ml', hoseVolume: '5 ml', pressure },
    outputs: ['pressureAfter'],
    draws: 20_000,
  })
  // By hand: `pressureAfter` is the pressure times a constant, so its 90 % band is the input's: ±1.645·u; ±2.353·u by
  // Student’s t with 3 degrees of freedom (GUM table G.2: 2.35); of ±a: 0.9·a, (1 − √0.1)·a, sin 81°·a; ends to ±a/2: within
  // the rectangle’s and what its widest would be.
  const half = (pressure: unknown) => {
    const { low, high, median } = Object(outputOf(runCalculation('doubt', asked(pressure))).pressureAfter)
    return (high - low) / 2 / median
  }
  it.each([
    [{ value: '80 psi', u: '2 psi' }, (1.645 * 2) / 80],
    [{ value: '80 psi', u: '2 psi', freedom: 3 }, (2.353 * 2) / 80],
    [{ value: '80 psi', low: '76 psi', high: '84 psi' }, (0.9 * 4) / 80],
    [{ value: '80 psi', low: '76 psi', high: '84 psi', shape: 'triangular' }, ((1 - Math.sqrt(0.1)) * 4) / 80],
    [{ value: '80 psi', low: '76 psi', high: '84 psi', shape: 'arcsine' }, (Math.sin((81 * Math.PI) / 180) * 4) / 80],
    [{ value: '80 psi', low: '76 psi', high: '84 psi', ends: '0.01 psi' }, (0.9 * 4) / 80],
  ])('%j', (pressure, expected) => {
    expect(Math.abs(half(pressure) / expected - 1)).toBeLessThan(0.02)
    // An error in common goes beside any of them.
    expect(half({ ...pressure, shared: { 'pump 3': '4 psi' } })).toBeGreaterThan(1.3 * expected)
  })
  it.each([
    [{ value: '80 psi', u: '2 psi', freedom: 2 }],
    [{ value: '80 psi', u: '2 psi', freedom: 4.5 }],
    [{ value: '80 psi', u: '2 psi', freedom: '5' }],
    [{ value: '80 psi', low: '76 psi', high: '84 psi', shape: 'round' }],
    [{ value: '80 psi', low: '76 psi', high: '84 psi', ends: '5 psi' }],
    [{ value: '80 psi', low: '76 psi', high: '84 psi', ends: '0 psi' }],
    [{ value: '85 psi', low: '76 psi', high: '84 psi', shape: 'arcsine' }],
  ])('refuses %j', (pressure) => {
    expect(runCalculation('doubt', asked(pressure))).toMatchObject({
      ok: false,
      errors: [{ field: 'input.pressure', code: 'wrong-form' }],
    })
  })
})

describe('units of what is doubtful', () => {
  it('of a name the question chooses', () => {
    const example = calculations.diagnose?.example ?? {}
    const { posteriors } = outputOf(runCalculation('diagnose', example))
    const first = `posteriors.${Object.keys(Object(posteriors))[0]}`
    expect(first.length).toBeGreaterThan('posteriors.'.length)
  })
  it('of a figure whose unit stands beside it', () => {
    const example = calculations.calibrate?.example ?? {}
    const points = [{ pressure: '88 psi', load: { value: '351 N', u: '5 N' }, stroke: '30.5 mm' }]
    const question = { calc: 'calibrate', input: { ...example, points }, outputs: ['value', 'band[0]'], draws: 200 }
    expect(outputOf(runCalculation('doubt', question))).toMatchObject({
      value: { unit: 'm³' },
      'band[0]': { unit: 'm³' },
    })
  })
})

describe('in steps', () => {
  const question = calculations.doubt?.example ?? {}
  it('comes to the same answer, tells how far it is, and gives every draw', () => {
    const seen: number[] = []
    const drawn: Record<string, readonly number[]> = {}
    const answer = runDoubt(
      { ...question, draws: 2000 },
      {
        progress: (done) => seen.push(done),
        drawn(output, numbers) {
          drawn[output] = numbers
        },
      },
    )
    expect(answer).toEqual(runCalculation('doubt', { ...question, draws: 2000 }))
    expect(seen).toEqual([500, 1000, 1500])
    expect(drawn.pressure).toHaveLength(2000)
  })
  it('refuses as the calculation does', () => {
    const wrong = { ...question, outputs: ['stroke.x'] }
    expect(doubtInSteps(wrong).next()).toEqual({
      done: true,
      value: { answer: runCalculation('doubt', wrong), drawn: {} },
    })
    expect(doubtInSteps(5).next().value).toMatchObject({ answer: { ok: false } })
  })
})

it('a doubt given to another calculation says where it goes', () => {
  const input = { ...calculations.sag?.example, load: { value: '351 N', u: '10 N' } }
  expect(runCalculation('sag', input)).toMatchObject({
    errors: [
      { field: 'load', next: 'A doubt is carried by the calculation doubt: ask that one, with this as its input.' },
    ],
  })
})

it('the question of docs/doubt.md is answered: one pump read twice hardly touches the leak', () => {
  const page = readFileSync(join(import.meta.dirname, '../../../docs/doubt.md'), 'utf8')
  const [, question = ''] = /```json\n([\s\S]+?)```/.exec(page) ?? []
  const { leak, pressureEnd } = outputOf(runCalculation('doubt', JSON.parse(question)))
  expect(Object(leak).shares['pump 3']).toBeLessThan(0.02)
  expect(Object(pressureEnd).shares['pump 3']).toBeGreaterThan(0.9)
})
