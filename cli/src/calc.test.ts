import { PassThrough, Readable } from 'node:stream'
import { describe, expect, it } from 'vitest'
import { runCalc } from './calc.ts'

async function run(name: string, text: string, lines = false) {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()]
  const out: string[] = []
  const err: string[] = []
  stdout.on('data', (part) => out.push(String(part)))
  stderr.on('data', (part) => err.push(String(part)))
  const code = await runCalc({ name, lines, stdin: Readable.from([text]), stdout, stderr })
  return { code, out: out.join(''), err: err.join('') }
}

describe('legwork calc', () => {
  // ISO 2533: 79,495.22 Pa at 2000 m.
  it('answers one object with units and assumptions', async () => {
    const { code, out, err } = await run('air-pressure', '{"altitude": "2000 m"}')
    expect([code, err]).toEqual([0, ''])
    const answer: unknown = JSON.parse(out)
    expect(answer).toMatchObject({ ambient: expect.closeTo(79_495.22, 1), units: { ambient: 'Pa' } })
  })

  it('refuses with one line a field, exit 2, and nothing on standard output', async () => {
    const { code, out, err } = await run('torque', '{"wanted": "5", "wrenchLength": "200 mm", "colour": 1}')
    expect([code, out]).toEqual([2, ''])
    expect(err.trim().split('\n').length).toBe(3)
    expect(err).toContain('wanted is "5"; it must be')
  })

  it.each(['', 'no json', '[1]', 'null'])('refuses %j', async (text) => {
    const { code, out } = await run('torque', text)
    expect([code, out]).toEqual([2, ''])
  })

  it('answers a line for a line, and keeps an error on its line', async () => {
    const { code, out } = await run(
      'air-pressure',
      '{"altitude": 0}\n{"altitude": "high"}\n\n{"altitude": 1000}\n',
      true,
    )
    const answers: unknown[] = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect(code).toBe(0)
    expect(answers).toMatchObject([
      { ambient: 101_325 },
      { error: { errors: [{ field: 'altitude' }] } },
      { temperature: 281.65 },
    ])
  })

  it('refuses a name that is not there', async () => {
    expect(await run('horoscope', '{}')).toMatchObject({ code: 2, out: '' })
  })
})
