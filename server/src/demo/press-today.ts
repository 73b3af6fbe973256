/**
 * A press test in the demo: what a fork made to this sheet would show, with a friction of its own and readings that scatter.
 * Drawn from a seed, measured on nothing.
 */
import { normalDraw, pressTest, seededDraws, springCurve } from '@legwork/engine'
import { type EntryBodies, pressHold, pressStops, springOf } from '@legwork/trade'
import type { Begun, DemoShop } from './job-of-today.ts'

/** A luggage scale reads to 10 g and is held by hand: 4 N; the tape is read to 0.7 mm. */
const [forceScatter, strokeScatter] = [4, 0.0007]

interface Pressed {
  phase: 'received' | 'done'
  /** Gauge, in the chamber [Pa]. */
  pressure: number
  /** Of the whole fork, either way [N]. */
  friction: number
  seed: number
}

/** Fills, then presses stop by stop down and back up; the friction is what the press test makes of it. */
export function pressToday(job: Begun, shop: DemoShop, { phase, pressure, friction, seed }: Pressed): void {
  const { pump, scale, thermometer } = shop.instruments
  const draws = seededDraws(seed)
  const spring = springOf(job.sheet)
  const at = { leg: null, phase } as const
  const write = (what: string, reading: EntryBodies['measured']['reading'], press?: EntryBodies['measured']['press']) =>
    job.write('measured', { what, ...at, reading, ...(press ? { press } : {}) })
  write('press-temperature', { value: 293.15, measure: 'K', instrument: thermometer, how: null })
  const of = write('press-pressure', { value: pressure, measure: 'Pa', instrument: pump, how: 'pumped' })
  const read = (stroke: number, way: 'pressing' | 'releasing'): number => {
    const really = stroke + strokeScatter * normalDraw(draws)
    const { points } = springCurve({ ...spring, stroke: really }, { pressure, points: 2 })
    const held = (points.at(-1)?.force ?? 0) + (way === 'pressing' ? friction : -friction)
    const value = Math.round(held + forceScatter * normalDraw(draws))
    write('press-force', { value, measure: 'N', instrument: scale, how: null }, { of, stroke, way, held: pressHold })
    return value
  }
  const stops = pressStops(spring, pressure, 0.2 * spring.stroke)
  const pressing = stops.map((stroke) => read(stroke, 'pressing'))
  const releasing = stops.toReversed().map((stroke) => read(stroke, 'releasing'))
  const readings = stops.map((stroke, index) => ({
    stroke,
    pressing: pressing[index] ?? 0,
    releasing: releasing.at(-1 - index) ?? 0,
  }))
  const found = pressTest(spring, {
    presses: [{ pressure, readings }],
    forceSd: forceScatter,
    strokeSd: strokeScatter,
  })
  const value = Math.round(found.friction * 10) / 10
  write('friction', { value, measure: 'N', instrument: scale, how: null })
}
