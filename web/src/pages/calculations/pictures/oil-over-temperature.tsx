/** One oil over temperature on the paper of the standard, where an oil is a straight line: both points, 40 °C, and where it rides. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading } from '../../../charts/plot.tsx'
import { useMeasures } from '../../../figures/world.tsx'
import { answerTo, numberAt, rowsAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'
import { useWritten } from './written.ts'

/** ASTM D341: log log (ν + 0.7) over log T, viscosity in mm²/s, temperature in K. */
const upOf = (viscosity: number) => Math.log10(Math.log10(viscosity * 1e6 + 0.7))
const acrossOf = (kelvin: number) => Math.log10(kelvin)

const marks = [1, 2, 3, 5, 7, 10, 15, 20, 30, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 100_000, 1_000_000]
const [at40, at100] = [313.15, 373.15]

/** Every so many degrees that a round number of marks stand along the axis. */
function roundDegrees(from: number, to: number): number[] {
  const step = [5, 10, 20, 25, 50].find((each) => (to - from) / each <= 7) ?? 50
  const first = Math.ceil(from / step)
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, index) => (first + index) * step)
}

/** Marks at least so far from one another, from the thickest down. */
function apart<T extends { at: number }>(ticks: readonly T[], least: number): T[] {
  let last = Number.POSITIVE_INFINITY
  return ticks.toReversed().filter(({ at }) => {
    const isFar = last - at >= least
    if (isFar) last = at
    return isFar
  })
}

/** Middle of a grade of ISO 3448 [mm²/s]; the four thinnest are not what they are called. */
function middleOf(grade: string): number {
  const called = Number(grade.replace(/\D+/g, ''))
  return (
    new Map([
      [2, 2.2],
      [3, 3.2],
      [5, 4.6],
      [7, 6.8],
    ]).get(called) ?? called
  )
}

function lineOf(input: unknown, from: number, to: number) {
  const at = (kelvin: number): number | null => {
    const answer = answerTo('viscosity', { ...Object(input), temperature: kelvin })
    return answer ? numberAt(answer, ['viscosity']) : null
  }
  const kelvins = Array.from({ length: 33 }, (_, index) => from + (index / 32) * (to - from))
  // Thinner than this the paper of the standard has no place for it.
  const line = kelvins.flatMap((kelvin) => {
    const there = at(kelvin)
    return there === null || there < 0.5e-6 ? [] : [{ x: acrossOf(kelvin), y: upOf(there) }]
  })
  return { line, at40Viscosity: at(at40) }
}

export function OilOverTemperaturePicture({ input, output, width }: PictureProps) {
  const person = useMeasures()
  const hatch = usePatternId()
  const written = useWritten()
  const degrees = useReadAs('temperature', 300)
  const asked = numberAt(input, ['temperature'])
  const viscosity = numberAt(output, ['viscosity'])
  const given = rowsAt(input, 'points').map((point) => ({
    kelvin: numberAt(point, ['temperature']),
    viscosity: numberAt(point, ['viscosity']),
  }))
  const hand = given.length > 0 ? given : [{ kelvin: at40, viscosity: numberAt(input, ['viscosity40']) }]
  const kelvins = [asked, at40, at100, ...given.map(({ kelvin }) => kelvin)]
  const [from, to] = [Math.min(...kelvins) - 8, Math.max(...kelvins) + 8]
  const { line, at40Viscosity } = useMemo(() => lineOf(input, from, to), [input, from, to])
  const ys = [...line.map(({ y }) => y), upOf(viscosity)]
  const [low, high] = [Math.min(...ys), Math.max(...ys)]
  const room = Math.max(0.02, (high - low) * 0.06)
  const isCelsius = person.temperature === '°C'
  const kelvinOf = (degree: number) => (isCelsius ? degree + 273.15 : (degree - 32) / 1.8 + 273.15)
  const acrossTicks = roundDegrees(degrees.of(from), degrees.of(to)).map((degree) => ({
    at: acrossOf(kelvinOf(degree)),
    text: String(degree).replace('-', '−'),
  }))
  const upTicks = apart(
    marks
      .map((mark) => ({
        at: upOf(mark * 1e-6),
        text: mark >= 10_000 ? mark.toLocaleString('en').replaceAll(',', '\u2009') : String(mark),
      }))
      .filter(({ at: y }) => y >= low - room && y <= high + room),
    (high - low + 2 * room) / 11,
  )
  const { grade } = output
  const middle = typeof grade === 'string' ? middleOf(grade) : null
  return (
    <Plot
      width={width}
      height={380}
      across={{
        from: acrossOf(from),
        to: acrossOf(to),
        unit: degrees.unit,
        words: say('calc.field.temperature'),
        ticks: acrossTicks,
      }}
      up={{ from: low - room, to: high + room, unit: 'mm²/s', words: say('calc.field.viscosity'), ticks: upTicks }}
      label={say('calc.picture.viscosity')}
    >
      {(frame) => {
        const x = frame.x(acrossOf(asked))
        const y = frame.y(upOf(viscosity))
        // Words on the side of the line that has more room.
        const isLeft = x > (frame.left + frame.right) / 2
        return (
          <>
            <defs>
              <Hatch id={hatch} pitch={4} width={1} />
            </defs>
            <path
              d={`M${px(x)} ${frame.bottom}V${px(y)}H${frame.left}`}
              fill="none"
              stroke="var(--ink)"
              strokeWidth={1}
              strokeDasharray="9 2.5 2 2.5"
            />
            {at40Viscosity !== null && (
              <path
                d={`M${px(frame.x(acrossOf(at40)))} ${frame.bottom}V${px(frame.y(upOf(at40Viscosity)))}`}
                stroke="var(--ink)"
                strokeWidth={0.8}
              />
            )}
            {middle !== null && at40Viscosity !== null && (
              <>
                <rect
                  x={px(frame.x(acrossOf(at40)) - 6)}
                  y={px(frame.y(upOf(middle * 1.1e-6)))}
                  width={12}
                  height={px(Math.max(3, frame.y(upOf(middle * 0.9e-6)) - frame.y(upOf(middle * 1.1e-6))))}
                  fill={`url(#${hatch})`}
                  stroke="var(--ink)"
                  strokeWidth={1}
                />
                <BookWords halo x={px(frame.x(acrossOf(at40)) + 13)} y={px(frame.y(upOf(at40Viscosity)) - 8)}>
                  {String(grade)}
                </BookWords>
              </>
            )}
            <PlotLine frame={frame} points={line} />
            {hand.map(({ kelvin, viscosity: of }) => (
              <PlotReading key={kelvin} frame={frame} at={{ x: acrossOf(kelvin), y: upOf(of) }} />
            ))}
            <circle cx={px(x)} cy={px(y)} r={4.5} fill="var(--ink)" />
            <Lettering
              halo
              x={px(x + (isLeft ? -12 : 12))}
              y={px(y + (isLeft ? 20 : -10))}
              textAnchor={isLeft ? 'end' : 'start'}
              fontSize={17}
            >
              {say('calc.picture.at', { value: written(viscosity, 'viscosity'), place: written(asked, 'temperature') })}
            </Lettering>
          </>
        )
      }}
    </Plot>
  )
}
