/** Leverage over the shock's stroke, and where the load was asked for. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading } from '../../../charts/plot.tsx'
import { isRecord } from '../draft.ts'
import { answerTo, numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'
import { useWritten } from './written.ts'

const gravity = 9.80665

/** How far the leverage is known, and the places at which a hand gave it. */
function givenOf(leverage: unknown, asked: number): { end: number; places: { stroke: number; leverage: number }[] } {
  if (Array.isArray(leverage)) {
    const places = leverage.filter(isRecord).map((line) => ({
      stroke: numberAt(line, ['stroke']),
      leverage: numberAt(line, ['leverage']),
    }))
    return { end: Math.max(asked, ...places.map(({ stroke }) => stroke)), places }
  }
  if (isRecord(leverage)) {
    const end = numberAt(leverage, ['stroke'])
    const places = [
      { stroke: 0, leverage: numberAt(leverage, ['start']) },
      { stroke: end, leverage: numberAt(leverage, ['end']) },
    ]
    return { end, places }
  }
  return { end: Math.max(0.06, asked * 1.2), places: [] }
}

export function LeverageOverStrokePicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const length = useReadAs('length', 0.1)
  const { leverage } = Object(input)
  const asked = numberAt(input, ['stroke'])
  const { end, places } = givenOf(leverage, asked)
  const points = useMemo(
    () =>
      Array.from({ length: 61 }, (_, index) => (index / 60) * end).map((stroke) => ({
        stroke,
        // A load of one kilogram, divided by its weight, is the leverage itself.
        leverage: numberAt(answerTo('shock-load', { rearSprungMass: 1, leverage, stroke }), ['load']) / gravity,
      })),
    [leverage, end],
  )
  const ratios = points.map((one) => one.leverage)
  const [low, high] = [Math.min(...ratios), Math.max(...ratios)]
  const room = Math.max(0.15, (high - low) * 0.25)
  const here = points.reduce((near, one) => (Math.abs(one.stroke - asked) < Math.abs(near.stroke - asked) ? one : near))
  return (
    <Plot
      width={width}
      height={270}
      across={{ from: 0, to: length.of(end), unit: length.unit, words: say('calc.picture.shock-stroke') }}
      up={{ from: low - room, to: high + room, unit: '', words: say('calc.field.leverage') }}
      label={say('calc.picture.shock-load')}
    >
      {(frame) => {
        const [x, y] = [frame.x(length.of(asked)), frame.y(here.leverage)]
        const isLeft = x > (frame.left + frame.right) / 2
        return (
          <>
            <path
              d={`M${px(x)} ${frame.bottom}V${px(y)}`}
              stroke="var(--ink)"
              strokeWidth={1}
              strokeDasharray="9 2.5 2 2.5"
            />
            <PlotLine frame={frame} points={points.map((one) => ({ x: length.of(one.stroke), y: one.leverage }))} />
            {places.map((place) => (
              <PlotReading key={place.stroke} frame={frame} at={{ x: length.of(place.stroke), y: place.leverage }} />
            ))}
            <circle cx={px(x)} cy={px(y)} r={4.5} fill="var(--ink)" />
            <Lettering
              halo
              x={px(x + (isLeft ? -10 : 10))}
              y={px(y - 14)}
              textAnchor={isLeft ? 'end' : 'start'}
              fontSize={17}
            >
              {written(numberAt(output, ['load']), 'force')}
            </Lettering>
          </>
        )
      }}
    </Plot>
  )
}
