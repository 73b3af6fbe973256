/** Curves of a spring with the load that rests on them: what every question of set-up is drawn on. */
import { say } from '@legwork/trade'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, type PlotFrame, PlotLine, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { LinkButton } from '../../../ui/button.tsx'
import { writeInput } from '../input-notation.ts'
import { forceOn, type StrokeForce } from './curve-of.ts'
import { useReadAs } from './read-as.ts'

export interface DrawnCurve {
  points: readonly StrokeForce[]
  look: 'heavy' | 'second' | 'before'
  /** Written along the curve. */
  words?: string
  /** Where they stand, as a share of the curve. */
  wordsAt?: number
  /** Hatched between the curve and the load, from one stroke to another: the energy of a hit. */
  energy?: readonly [from: number, to: number]
}

interface Mark extends StrokeForce {
  /** Ring: a hand measured it. Dot: worked out. */
  is: 'ring' | 'dot'
  /** Ends of its doubt along the stroke. */
  band?: readonly [number, number]
  /** What is read there. */
  words?: string
}

interface CurvesAndLoadProps {
  curves: readonly DrawnCurve[]
  load?: { force: number; half?: number }
  marks?: readonly Mark[]
  /** A level of force that is wanted somewhere. */
  level?: { force: number; words: string }
  width: number
  label: string
  /** The question whose answer is the heavy curve as a table. */
  table?: Record<string, unknown>
}

/** Where the curves lie furthest apart, the higher has its words above it and the others below. */
function isHighest(curve: DrawnCurve, all: readonly DrawnCurve[]): boolean {
  const end = Math.min(...all.flatMap(({ points }) => points.at(-1)?.stroke ?? []))
  const at = ({ points }: DrawnCurve) => (points.length > 0 ? forceOn(points, end * 0.85) : Number.NEGATIVE_INFINITY)
  return all.every((other) => at(curve) >= at(other))
}

export function CurvesAndLoad({ curves, load, marks = [], level, width, label, table }: CurvesAndLoadProps) {
  const [loaded, energy] = [usePatternId(), usePatternId()]
  const stroke = useReadAs('length', 0.1)
  const force = useReadAs('force', 1000)
  const all = curves.flatMap(({ points }) => points)
  const ends = [...all, ...marks].map((one) => stroke.of(one.stroke))
  const heights = [
    ...all.map((one) => one.force),
    ...marks.map((one) => one.force),
    load?.force ?? 0,
    level?.force ?? 0,
  ]
  const at = (one: StrokeForce) => ({ x: stroke.of(one.stroke), y: force.of(one.force) })
  return (
    <>
      <Plot
        width={width}
        height={340}
        across={{ from: 0, to: Math.max(...ends, 0) || 1, unit: stroke.unit, words: say('calc.out.stroke') }}
        up={{ ...roundAxis(heights.map(force.of)), unit: force.unit, words: say('calc.out.force') }}
        label={label}
      >
        {(frame) => (
          <>
            <defs>
              <Hatch id={loaded} pitch={5} width={0.8} opacity={0.6} />
              <Hatch id={energy} pitch={7} angle={-45} width={0.8} opacity={0.6} />
            </defs>
            {load && (
              <LoadLine
                frame={frame}
                hatch={loaded}
                low={force.of(load.force - (load.half ?? 0))}
                at={force.of(load.force)}
                high={force.of(load.force + (load.half ?? 0))}
              />
            )}
            {curves.map((curve) => (
              <Fill
                key={`${curve.look}${curve.words ?? ''}`}
                frame={frame}
                curve={curve}
                at={at}
                hatch={energy}
                load={load?.force ?? 0}
              />
            ))}
            {level && (
              <>
                <path
                  d={`M${frame.left} ${px(frame.y(force.of(level.force)))}H${frame.right}`}
                  stroke="var(--ink)"
                  strokeWidth={1}
                  strokeDasharray="9 2.5 2 2.5"
                />
                <BookWords halo x={frame.left + 8} y={px(frame.y(force.of(level.force)) - 7)}>
                  {level.words}
                </BookWords>
              </>
            )}
            {curves.map((curve) => (
              <PlotLine
                key={`${curve.look}${curve.words ?? ''}`}
                frame={frame}
                points={curve.points.map(at)}
                look={curve.look}
              />
            ))}
            {curves.map((curve) => (
              <CurveWords
                key={`${curve.look}${curve.words ?? ''}`}
                frame={frame}
                curve={curve}
                at={at}
                isAbove={isHighest(curve, curves)}
              />
            ))}
            {marks.map((mark, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: marks keep their places
              <Marked key={index} frame={frame} mark={mark} at={at} stroke={stroke.of} />
            ))}
          </>
        )}
      </Plot>
      {table && (
        <LinkButton
          kind="second"
          size="row"
          href={`/calculations/spring-curve?input=${writeInput({ points: 31, ...table })}`}
        >
          {say('calc.picture.table')}
        </LinkButton>
      )}
    </>
  )
}

type Placed = (one: StrokeForce) => { x: number; y: number }

function LoadLine({
  frame,
  hatch,
  low,
  at,
  high,
}: {
  frame: PlotFrame
  hatch: string
  low: number
  at: number
  high: number
}) {
  return (
    <>
      {high > low && (
        <rect
          x={frame.left}
          y={px(frame.y(high))}
          width={px(frame.right - frame.left)}
          height={px(frame.y(low) - frame.y(high))}
          fill={`url(#${hatch})`}
        />
      )}
      <path d={`M${frame.left} ${px(frame.y(at))}H${frame.right}`} stroke="var(--ink)" strokeWidth={1.2} />
      <BookWords halo x={frame.right - 6} y={px(frame.y(at) - 7)} textAnchor="end">
        {say('calc.picture.load')}
      </BookWords>
    </>
  )
}

function Fill({
  frame,
  curve,
  at,
  hatch,
  load,
}: {
  frame: PlotFrame
  curve: DrawnCurve
  at: Placed
  hatch: string
  load: number
}) {
  if (!curve.energy) return null
  const [from, to] = curve.energy
  const inside = curve.points.filter(({ stroke }) => stroke > from && stroke < to)
  const edge = [from, to].map((stroke) => ({ stroke, force: forceOn(curve.points, stroke) }))
  const [first, last] = edge
  if (!first || !last) return null
  const outline = [{ stroke: from, force: load }, first, ...inside, last, { stroke: to, force: load }].map(at)
  return (
    <path
      d={`M${outline.map(({ x, y }) => `${px(frame.x(x))} ${px(frame.y(y))}`).join('L')}z`}
      fill={`url(#${hatch})`}
    />
  )
}

/** Of the book's face at 15 px. */
const widthOfLetter = 6.9

interface CurveWordsProps {
  frame: PlotFrame
  curve: DrawnCurve
  at: Placed
  isAbove: boolean
}

function CurveWords({ frame, curve, at, isAbove }: CurveWordsProps) {
  const share = isAbove ? (curve.wordsAt ?? 0.7) : 0.52
  const place = curve.points[Math.floor(curve.points.length * share)]
  if (!curve.words || !place) return null
  const { x, y } = at(place)
  // Below a curve there is room to its right, but not beyond the paper.
  const beside = isAbove ? frame.x(x) - 10 : Math.min(frame.x(x) + 8, frame.right - curve.words.length * widthOfLetter)
  return (
    <BookWords halo x={px(beside)} y={px(frame.y(y) + (isAbove ? -12 : 22))} textAnchor={isAbove ? 'end' : 'start'}>
      {curve.words}
    </BookWords>
  )
}

function Marked({
  frame,
  mark,
  at,
  stroke,
}: {
  frame: PlotFrame
  mark: Mark
  at: Placed
  stroke: (si: number) => number
}) {
  const { x, y } = at(mark)
  const isLeft = frame.x(x) > (frame.left + frame.right) / 2
  const [left, right] = (mark.band ?? [mark.stroke, mark.stroke]).map((end) => frame.x(stroke(end)))
  return (
    <>
      {mark.is === 'dot' && (
        <path
          d={`M${px(frame.x(x))} ${px(frame.y(y))}V${frame.bottom}`}
          stroke="var(--ink)"
          strokeWidth={1}
          strokeDasharray="9 2.5 2 2.5"
        />
      )}
      {mark.band && left !== undefined && right !== undefined && (
        <path
          d={`M${px(left)} ${px(frame.bottom - 12)}H${px(right)}M${px(left)} ${px(frame.bottom - 17)}v10M${px(right)} ${px(frame.bottom - 17)}v10`}
          stroke="var(--ink)"
          strokeWidth={1.6}
          fill="none"
        />
      )}
      {mark.is === 'ring' ? (
        <PlotReading frame={frame} at={{ x, y }} />
      ) : (
        <circle cx={px(frame.x(x))} cy={px(frame.y(y))} r={4.5} fill="var(--ink)" />
      )}
      {mark.words && (
        <Lettering
          halo
          x={px(frame.x(x) + (isLeft ? -10 : 10))}
          y={px(frame.y(y) + (isLeft ? -8 : 20))}
          textAnchor={isLeft ? 'end' : 'start'}
          fontSize={17}
        >
          {mark.words}
        </Lettering>
      )}
    </>
  )
}
