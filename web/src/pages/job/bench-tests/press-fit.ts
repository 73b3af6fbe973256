/** What the engine says of a press: its answer, and the curves of the sheet and of what fits best. */
import {
  type PressTest,
  pressFits,
  pressTest,
  Refusal,
  type RefusedField,
  springCurve,
  supposedSpring,
} from '@legwork/engine'
import type { PressAsked } from './press-asked.ts'

export interface PressCurve {
  /** [m] and [N]. */
  points: readonly { stroke: number; force: number }[]
}

export interface PressFitted {
  test: PressTest
  /** One a press. */
  sheet: readonly PressCurve[]
  best: readonly PressCurve[]
}

/** Curves go a little beyond the deepest stop. */
const beyond = 1.06
const ambient = 101_325

function curves({ spring, presses }: PressAsked, fit: ReturnType<typeof pressFits>[number] | undefined): PressCurve[] {
  if (!fit) return []
  return presses.map(({ pressure = 0, readings }) => {
    const there = supposedSpring(spring, fit.name, fit.estimate ?? 0, fit.scale, pressure, ambient)
    const { points } = springCurve(there.spring, {
      ...(spring.kind === 'coil' ? {} : { pressure: there.pressure }),
      points: 101,
    })
    const deepest = beyond * Math.max(...readings.map(({ stroke }) => stroke))
    return { points: points.filter(({ stroke }) => stroke <= deepest).map(({ stroke, force }) => ({ stroke, force })) }
  })
}

function fitted(asked: PressAsked): PressFitted {
  const { spring, ...question } = asked
  const fits = pressFits(spring, question)
  return {
    test: pressTest(spring, question),
    sheet: curves(
      asked,
      fits.find(({ name }) => name === 'as-sheet'),
    ),
    best: curves(asked, fits[0]),
  }
}

/** Why the engine takes no such press, field by field. */
export interface PressRefused {
  refused: readonly RefusedField[]
}

/** Refused where the readings can't be: an answer as well, so that it also crosses from a worker. */
export function fitOf(asked: PressAsked): PressFitted | PressRefused {
  try {
    return fitted(asked)
  } catch (error) {
    if (error instanceof Refusal) return { refused: error.errors }
    throw error
  }
}
