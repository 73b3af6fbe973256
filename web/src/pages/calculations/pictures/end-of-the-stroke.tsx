/** What spacers, pressure and oil do near the end: the same sag with another curve, the same hit on another spring. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { answerTo, numberAt } from './asked-of.ts'
import { conditionsOf, curveOf, forceOn } from './curve-of.ts'
import { CurvesAndLoad } from './curves-and-load.tsx'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

export function SpacersPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const { spring, load, sag, at = 0.9, exponent = 1.3, ambient } = Object(input)
  const [spacers, pressure] = [numberAt(output, ['spacers']), numberAt(output, ['pressure'])]
  const startStroke = numberAt(sag, []) * numberAt(spring, ['stroke'])
  const curves = useMemo(() => {
    const bare = { ...spring, spacers: 0 }
    const without = numberAt(answerTo('pressure-for-sag', { spring: bare, load, sag, ambient }), ['pressure'])
    const fast = { exponent, startStroke, ambient }
    return {
      with: curveOf({ ...fast, spring: { ...spring, spacers }, pressure }),
      without: spacers > 0 ? curveOf({ ...fast, spring: bare, pressure: without }) : [],
    }
  }, [spring, load, sag, exponent, startStroke, ambient, spacers, pressure])
  return (
    <CurvesAndLoad
      width={width}
      curves={[
        { points: curves.without, look: 'second', words: say('calc.picture.spacers', { n: 0 }) },
        { points: curves.with, look: 'heavy', words: say('calc.picture.spacers', { n: spacers }), wordsAt: 0.74 },
      ]}
      load={{ force: numberAt(load, []) }}
      level={{ force: numberAt(input, ['endForce']), words: say('calc.picture.wanted') }}
      marks={[
        {
          stroke: numberAt(at, []) * numberAt(spring, ['stroke']),
          force: numberAt(output, ['force']),
          is: 'dot',
          words: written(numberAt(output, ['force']), 'force'),
        },
      ]}
      label={say('calc.picture.spacers-for-end-force')}
    />
  )
}

/** Both fast curves, each from its own sag. */
function hitsOf(input: unknown) {
  const { spring, load, exponent = 1.3, to } = Object(input)
  const { pressure, ambient, lower, ...parts } = Object(to)
  const here = conditionsOf(input)
  const given = { ...(Object(spring).kind === 'coil' ? {} : parts), lower }
  const kept = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined))
  const changes = Object.entries({ pressure, ambient }).filter(([, value]) => value !== undefined)
  const fastOf = (asked: Record<string, unknown>) => {
    const startStroke = numberAt(answerTo('sag', { ...asked, load }), ['stroke'])
    return { startStroke, points: curveOf({ ...asked, exponent, startStroke }) }
  }
  return {
    here: fastOf(here),
    there: fastOf({ ...here, ...Object.fromEntries(changes), spring: { ...spring, ...kept } }),
  }
}

export function TravelUsedPicture({ input, output, width }: PictureProps) {
  const { load, deepest } = Object(input)
  const there = numberAt(output, ['deepestThere'])
  const written = useWritten()
  const drawn = useMemo(() => hitsOf(input), [input])
  return (
    <CurvesAndLoad
      width={width}
      curves={[
        { points: drawn.here.points, look: 'before', words: say('calc.picture.travel.here') },
        {
          points: drawn.there.points,
          look: 'heavy',
          words: say('calc.picture.travel.there'),
          wordsAt: 0.68,
          energy: [drawn.there.startStroke, there],
        },
      ]}
      load={{ force: numberAt(load, []) }}
      marks={[
        { stroke: numberAt(deepest, []), force: forceOn(drawn.here.points, numberAt(deepest, [])), is: 'ring' },
        { stroke: there, force: forceOn(drawn.there.points, there), is: 'dot', words: written(there, 'length') },
      ]}
      label={say('calc.picture.travel')}
    />
  )
}
