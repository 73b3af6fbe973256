/** A press: its readings with the curves that may explain them, and how far either lies off the sheet. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, type PlotFrame, PlotLine, type PlotPoint, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { ChoiceName } from '../names.tsx'
import { KeyLine, KeyOf, LineKey } from './line-key.tsx'
import type { PictureProps } from './picture.ts'
import { type PressAsked, type PressLine, type PressPoint, pressDrawn } from './press-curves.ts'
import { type ReadAs, useReadAs } from './read-as.ts'

const others = ['second', 'third', 'fourth', 'fifth'] as const
type Look = 'heavy' | 'before' | (typeof others)[number]

/** The best is heavy, the sheet dotted, each of the others has a dash of its own and all have a letter. */
function looksOf(lines: readonly PressLine[]): { line: PressLine; look: Look; letter: string }[] {
  let other = 0
  return lines.map((line, place) => {
    const look = line.isBest ? 'heavy' : line.name === 'as-sheet' ? 'before' : (others[other++] ?? 'fifth')
    return { line, look, letter: String.fromCharCode(65 + place) }
  })
}

type Drawn = ReturnType<typeof looksOf>[number]

/** Letters at the ends of curves, kept a line apart. */
function Letters({ frame, ends }: { frame: PlotFrame; ends: readonly { letter: string; at: PlotPoint }[] }) {
  const apart = 15
  const placed = ends
    .map(({ letter, at }) => ({ letter, x: frame.x(at.x) + 4, y: frame.y(at.y) + 5 }))
    .sort((one, other) => one.y - other.y)
  placed.forEach((one, index) => {
    const above = placed[index - 1]
    if (above) one.y = Math.max(one.y, above.y + apart)
  })
  return placed.map(({ letter, x, y }) => (
    <Lettering key={letter} x={px(x)} y={px(y)} halo>
      {letter}
    </Lettering>
  ))
}

interface OffProps {
  drawn: readonly Drawn[]
  marks: ReturnType<typeof pressDrawn>['marks'][number]
  press: number
  pressure: number | null
  deepest: number
  width: number
  stroke: ReadAs
  force: ReadAs
}

/** Means of both directions, friction out, and hypotheses, less what the sheet gives. */
function OffTheSheet({ drawn, marks, press, pressure, deepest, width, stroke, force }: OffProps) {
  const filled = useReadAs('pressure', pressure ?? 1e6)
  const point = (one: PressPoint) => ({ x: stroke.of(one.stroke), y: force.of(one.force) })
  const curves = drawn.map((one) => ({ ...one, points: (one.line.offs[press] ?? []).map(point) }))
  const heights = [
    ...marks.flatMap(({ force: off, half }) => [force.of(off - half), force.of(off + half)]),
    ...curves.flatMap(({ points }) => points.map(({ y }) => y)),
  ]
  const title =
    pressure === null
      ? say('calc.picture.press.off')
      : say('calc.picture.press.off-at', { pressure: `${Math.round(filled.of(pressure) * 10) / 10} ${filled.unit}` })
  return (
    <figure>
      <figcaption className="book">{title}</figcaption>
      <Plot
        width={width}
        height={250}
        across={{ from: 0, to: stroke.of(deepest), unit: stroke.unit, words: say('calc.out.stroke') }}
        up={{ ...roundAxis(heights), unit: force.unit, words: say('calc.out.force') }}
        label={title}
      >
        {(frame) => (
          <>
            <path d={`M${frame.left} ${px(frame.y(0))}H${frame.right}`} stroke="var(--ink)" strokeWidth={0.8} />
            {curves.toReversed().map(({ letter, look, points }) => (
              <PlotLine key={letter} frame={frame} look={look} points={points} />
            ))}
            {marks.map(({ stroke: at, force: off, half }) => {
              const x = px(frame.x(stroke.of(at)))
              return (
                <g key={at}>
                  <path
                    d={`M${x} ${px(frame.y(force.of(off - half)))}V${px(frame.y(force.of(off + half)))}`}
                    stroke="var(--hand)"
                    strokeWidth={1.6}
                  />
                  <PlotReading frame={frame} at={point({ stroke: at, force: off })} />
                </g>
              )
            })}
            <Letters
              frame={frame}
              ends={curves.flatMap(({ letter, points }) => {
                const at = points.at(-1)
                return at ? [{ letter, at }] : []
              })}
            />
          </>
        )}
      </Plot>
    </figure>
  )
}

function Key({ drawn }: { drawn: readonly Drawn[] }) {
  return (
    <LineKey>
      {drawn.map(({ line, look, letter }) => (
        <KeyOf key={letter} sample={<KeyLine look={look} />}>
          <b translate="no">{letter}</b> <ChoiceName word={line.name} path={['name']} />
        </KeyOf>
      ))}
    </LineKey>
  )
}

export function PressTestPicture({ input, width }: PictureProps) {
  // What the schema of `press-test` gave, and what the engine has answered already.
  const asked = input as PressAsked
  const { lines, marks, deepest } = useMemo(() => pressDrawn(asked), [asked])
  const drawn = looksOf(lines)
  const stroke = useReadAs('length', 0.1)
  const force = useReadAs('force', 1000)
  const readings = asked.presses.flatMap((press) => press.readings)
  const point = (one: PressPoint) => ({ x: stroke.of(one.stroke), y: force.of(one.force) })
  const forces = [
    ...readings.map(({ pressing }) => force.of(pressing)),
    ...lines.flatMap((line) => line.forces.flatMap((points) => points.map((one) => force.of(one.force)))),
  ]
  return (
    <>
      <figure>
        <Plot
          width={width}
          across={{ from: 0, to: stroke.of(deepest), unit: stroke.unit, words: say('calc.out.stroke') }}
          up={{ ...roundAxis(forces), unit: force.unit, words: say('calc.out.force') }}
          label={say('calc.picture.press-test')}
        >
          {(frame) => (
            <>
              {drawn.toReversed().flatMap(({ line, letter, look }) =>
                line.forces.map((points, press) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: presses keep their places
                  <PlotLine key={`${letter}${press}`} frame={frame} look={look} points={points.map(point)} />
                )),
              )}
              {readings.map((one, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: readings have no name of their own
                <g key={index}>
                  <PlotReading frame={frame} at={point({ stroke: one.stroke, force: one.pressing })} />
                  <PlotReading frame={frame} at={point({ stroke: one.stroke, force: one.releasing })} way="triangle" />
                </g>
              ))}
              <BookWords x={px(frame.left + 12)} y={frame.top + 16} halo>
                {say('calc.picture.press.marks')}
              </BookWords>
            </>
          )}
        </Plot>
      </figure>
      <Key drawn={drawn} />
      {asked.presses.map(({ pressure = null }, press) => (
        <OffTheSheet
          // biome-ignore lint/suspicious/noArrayIndexKey: presses keep their places
          key={press}
          drawn={drawn}
          marks={marks[press] ?? []}
          press={press}
          pressure={asked.spring.kind === 'coil' ? null : pressure}
          deepest={deepest}
          width={width}
          stroke={stroke}
          force={force}
        />
      ))}
    </>
  )
}
