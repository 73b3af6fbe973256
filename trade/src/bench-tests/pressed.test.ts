import { describe, expect, it } from 'vitest'
import { reading, text, WrittenJob } from '../journal/written-job.ts'
import { nextStop, passedKey, pressesIn, readStops } from './pressed.ts'

const psi = 6894.757293168
const planned = [0.01, 0.02, 0.03]

function inThePress() {
  const job = new WrittenJob().ready()
  const of = job.put('measured', {
    what: 'press-pressure',
    leg: null,
    phase: 'received',
    reading: reading(88 * psi, 'Pa'),
  })
  const press = (stroke: number, way: 'pressing' | 'releasing', force: number) =>
    job.put('measured', {
      what: 'press-force',
      leg: null,
      phase: 'received',
      reading: reading(force, 'N'),
      press: { of, stroke, way, held: 20 },
    })
  const pressed = () => {
    const [one] = pressesIn(job.state.measured, 'received')
    if (!one) throw new Error('nothing was pressed')
    return one
  }
  return { job, press, pressed }
}

describe('what was read in the press', () => {
  it('goes down from stop to stop and comes back through them', () => {
    const { press, pressed } = inThePress()
    const ways: unknown[] = []
    for (let round = 0; round < 7; round++) {
      const next = nextStop(planned, pressed(), new Set())
      ways.push(next)
      if (next) press(next.stroke, next.way, 100)
    }
    expect(ways).toEqual([
      { stroke: 0.01, way: 'pressing' },
      { stroke: 0.02, way: 'pressing' },
      { stroke: 0.03, way: 'pressing' },
      { stroke: 0.03, way: 'releasing' },
      { stroke: 0.02, way: 'releasing' },
      { stroke: 0.01, way: 'releasing' },
      null,
    ])
  })

  it('leaves out a stop that was passed, both ways', () => {
    const { press, pressed } = inThePress()
    press(0.01, 'pressing', 100)
    const passed = new Set([passedKey(0.02)])
    expect(nextStop(planned, pressed(), passed)).toEqual({ stroke: 0.03, way: 'pressing' })
    press(0.03, 'pressing', 300)
    press(0.03, 'releasing', 260)
    expect(nextStop(planned, pressed(), passed)).toEqual({ stroke: 0.01, way: 'releasing' })
  })

  it('forgets a reading that is struck, and asks for it again', () => {
    const { job, press, pressed } = inThePress()
    press(0.01, 'pressing', 100)
    const wrong = press(0.02, 'pressing', 9000)
    expect(nextStop(planned, pressed(), new Set())?.stroke).toBe(0.03)
    job.put('struck', { entry: wrong, reason: text })
    expect(pressed().stops).toHaveLength(1)
    expect(nextStop(planned, pressed(), new Set())).toEqual({ stroke: 0.02, way: 'pressing' })
    expect(job.state.stopped).toBeNull()
  })

  it('counts the later of two readings at one stop, and only stops read both ways', () => {
    const { press, pressed } = inThePress()
    press(0.01, 'pressing', 100)
    press(0.01, 'pressing', 104)
    press(0.02, 'pressing', 200)
    press(0.01, 'releasing', 80)
    const read = readStops(pressed())
    expect(
      read.map(({ stroke, pressing, releasing }) => [stroke, pressing.reading.value, releasing.reading.value]),
    ).toEqual([[0.01, 104, 80]])
  })
})

describe('a press at half the pressure', () => {
  const fill = (job: WrittenJob, pressure: number) =>
    job.put('measured', { what: 'press-pressure', leg: null, phase: 'done', reading: reading(pressure, 'Pa') })

  it('begins the leak-down anew: air was let out for it', () => {
    const job = new WrittenJob().ready().workUntil().leakDown()
    expect(job.state.facts.leakDown).toBe('finished')
    fill(job, 88 * psi)
    expect(job.state.facts.leakDown).toBe('finished')
    fill(job, 44 * psi)
    expect(job.state.facts.leakDown).toBe('none')
    expect(job.state.basis.filledTo).toBeCloseTo(44 * psi, 3)
  })
})
