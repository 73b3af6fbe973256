import { describe, expect, it } from 'vitest'
import { calculations, describeCalculation, runCalculation } from './index.ts'

describe.each(Object.values(calculations))('$name', (one) => {
  it('answers its own example, every number with a unit', () => {
    const answer = runCalculation(one.name, one.example)
    if (!answer.ok) throw new Error(JSON.stringify(answer.errors))
    const { units, assumptions, ...output } = answer.output
    expect(Array.isArray(assumptions) && assumptions.length > 0).toBe(true)
    const paths: string[] = []
    const look = (value: unknown, path: string): void => {
      if (typeof value === 'number') {
        expect(Number.isFinite(value)).toBe(true)
        paths.push(path)
      } else if (Array.isArray(value)) for (const inner of value) look(inner, `${path}[]`)
      else if (value !== null && typeof value === 'object')
        for (const [key, inner] of Object.entries(value)) look(inner, path === '' ? key : `${path}.${key}`)
    }
    look(output, '')
    // A star stands for a name the question chooses.
    const starred = Object.keys(one.units).map((path) => path.split('.'))
    const hasUnit = (path: string) =>
      one.units[path] !== undefined ||
      starred.some((steps) => {
        const named = path.split('.')
        return steps.includes('*') && steps.every((step, index) => step === '*' || step === named[index])
      })
    expect(paths.filter((path) => !hasUnit(path))).toEqual([])
    // Dates carry no unit.
    expect(paths.length > 0).toBe(one.name !== 'due')
    expect(units).toEqual(one.units)
    expect(one.output.safeParse(output).error).toBeUndefined()
  })

  it('refuses an unknown field by its name', () => {
    const answer = runCalculation(one.name, { ...one.example, colour: 'red' })
    expect(answer.ok).toBe(false)
  })

  it('tells of itself with a schema', () => {
    expect(describeCalculation(one)).toMatchObject({ name: one.name, schema: expect.any(Object) })
  })
})

it('gives the worked example of FAA AC 43.13-1B, figure 7-2 form (figure number from memory): 135 in·lb, 10 in, 1.5 in -> 117.39', () => {
  const answer = runCalculation('torque', { wanted: '135 in·lbf', wrenchLength: '10 in', adapterLength: '1.5 in' })
  if (!answer.ok) throw new Error('refused')
  const inchPound = 0.1129848290276167
  expect(Math.abs(Number(answer.output.set) / inchPound - 117.39)).toBeLessThanOrEqual(0.005)
})

it('names field, value, what is allowed and what to do', () => {
  const answer = runCalculation('torque', { wanted: '5', wrenchLength: '245 mm', adapterLength: '30 mm' })
  expect(answer).toMatchObject({ ok: false, errors: [{ field: 'wanted', code: 'needs-measure', came: '"5"' }] })
})

it.each([
  [{ start: '2.8', end: 2.4, stroke: '55 mm' }, 'leverage.start'],
  [{ start: 2.8, end: 2.4, stroke: '55 psi' }, 'leverage.stroke'],
  [[{ stroke: 0, leverage: 2.8 }, { stroke: '55 mm' }], 'leverage[1].leverage'],
  ['much', 'leverage'],
])('of several forms names the field inside the one that came: %j', (leverage, field) => {
  expect(runCalculation('shock-load', { rearSprungMass: 55, leverage })).toMatchObject({ errors: [{ field }] })
})
