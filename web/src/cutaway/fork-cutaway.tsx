/** The section drawing of a fork: named shapes as SVG, laid down, crown right, hatched after ISO 128. */
import { useId } from 'react'
import { px } from '../charts/number-text.ts'
import { type CalloutPart, type CalloutPlace, calloutPlaces, wordsAcross } from './callout-places.ts'
import { legGap } from './chassis.ts'
import type { ForkParameters } from './fork-parameters.ts'
import { type ForkView, forkShapes, ringFrom } from './fork-shapes.ts'
import { forkStations } from './fork-stations.ts'
import type { FlatShape, Hatching, LineShape, Look, Point, RevolvedShape, Shape } from './shape.ts'
import './cutaway.css'

/** Figures of a chamber and what it does. */
export interface Callout {
  figures: readonly { value: string; unit: string }[]
  words: string
}

/** The words of the drawing: they stand where they act. */
export interface CutawayWords {
  callouts: Readonly<Record<CalloutPart, Callout>>
  leftLeg: string
  rightLeg: string
  down: string
}

export interface ForkCutawayProps {
  fork: ForkParameters
  view?: ForkView
  /** Spoken. */
  label: string
  /** Only with both legs: they stand between them. */
  words?: CutawayWords
}

const fills: Record<Look['material'], string> = {
  alloy: 'var(--alloy)',
  steel: 'var(--steel)',
  brass: 'var(--brass)',
  polymer: 'var(--polymer)',
  oil: 'var(--oil)',
  air: 'var(--air)',
  ink: 'var(--ink)',
  paper: 'var(--paper)',
  hand: 'var(--hand)',
  none: 'none',
}

interface HatchLook {
  pitch: number
  turn: number
  cross?: boolean
  dashes?: string
}
const hatchings: Record<Hatching, HatchLook> = {
  cast: { pitch: 2.6, turn: 45 },
  'cast-neighbour': { pitch: 2.6, turn: -45 },
  turned: { pitch: 2, turn: -45 },
  close: { pitch: 1.3, turn: 45 },
  spacer: { pitch: 3.4, turn: -45 },
  rubber: { pitch: 2, turn: 45, cross: true },
  foam: { pitch: 1.6, turn: 45, cross: true, dashes: '0.4 1.2' },
  liquid: { pitch: 2.2, turn: 90, dashes: '2.4 1.6' },
}

function Hatchings({ id }: { id: string }) {
  return Object.entries(hatchings).map(([name, { pitch, turn, cross, dashes }]) => (
    <pattern
      key={name}
      id={`${id}-${name}`}
      width={pitch}
      height={dashes ? 4 : pitch}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
    >
      <path
        d={cross ? `M0 0V4M0 ${pitch / 2}H${pitch}` : `M${pitch / 2} 0V4`}
        stroke="var(--ink)"
        strokeWidth={0.3}
        strokeDasharray={dashes}
        fill="none"
      />
    </pattern>
  ))
}

const axisOf = (leg: 'left' | 'right', both: boolean): number => (leg === 'left' && both ? legGap : 0)
const ring = (points: readonly Point[], y: (across: number) => number): string =>
  `M${points.map(([along, across]) => `${px(along)} ${px(y(across))}`).join('L')}Z`

/** Both halves of the section, above and below the axis. */
function revolvedPath(shape: RevolvedShape, axis: number): string {
  const onAxis = shape.section.filter(([, r]) => r === 0).length > 1
  // A part that fills the axis has no seam along it.
  if (onAxis) {
    const edge = shape.section.filter(([, r]) => r > 0)
    const whole = [...edge, ...edge.map(([u, r]): Point => [u, -r]).reverse()]
    return ring(whole, (r) => axis - r)
  }
  return ring(shape.section, (r) => axis - r) + ring(shape.section, (r) => axis + r)
}

function Cut({ shape, path, id }: { shape: RevolvedShape | FlatShape; path: string; id: string }) {
  const width = shape.outline === 'heavy' ? 0.75 : shape.outline === 'fine' ? 0.4 : 0
  const stroke = width > 0 ? 'var(--ink)' : 'none'
  return (
    <g data-shape={shape.name}>
      <path
        d={path}
        fill={fills[shape.material]}
        fillOpacity={shape.strength ?? 1}
        stroke={stroke}
        strokeWidth={width}
      />
      {shape.hatching && <path d={path} fill={`url(#${id}-${shape.hatching})`} />}
    </g>
  )
}

const dashes: Record<LineShape['dashes'], string | undefined> = {
  solid: undefined,
  axis: '7 1.5 1 1.5',
  phantom: '7 1.2 1 1.2 1 1.2',
}

function Part({ shape, both, id }: { shape: Shape; both: boolean; id: string }) {
  if (shape.kind === 'revolved')
    return <Cut shape={shape} path={revolvedPath(shape, axisOf(shape.leg, both))} id={id} />
  if (shape.kind === 'flat')
    return <Cut shape={shape} path={ring(shape.outlinePoints, (across) => axisOf('left', both) - across)} id={id} />
  const axis = axisOf(shape.leg, both)
  return (
    <path
      d={`M${shape.points.map(([along, across]) => `${px(along)} ${px(axis - across)}`).join('L')}`}
      fill="none"
      stroke="var(--ink)"
      strokeWidth={shape.weight === 'heavy' ? 0.75 : 0.3}
      strokeDasharray={dashes[shape.dashes]}
    />
  )
}

function extent(shapes: readonly Shape[], both: boolean): { x: number; y: number; width: number; height: number } {
  const points = shapes.flatMap((shape) => {
    if (shape.kind === 'revolved')
      return shape.section.flatMap(([u, r]): Point[] => mirrored(u, r, axisOf(shape.leg, both)))
    if (shape.kind === 'flat') return shape.outlinePoints.map(([u, v]): Point => [u, axisOf('left', both) - v])
    return shape.points.map(([u, v]): Point => [u, axisOf(shape.leg, both) - v])
  })
  const along = points.map(([u]) => u)
  const across = points.map(([, v]) => v)
  const [x, y] = [Math.min(...along) - 2, Math.min(...across) - 2]
  return { x, y, width: Math.max(...along) + 2 - x, height: Math.max(...across) + 2 - y }
}
const mirrored = (u: number, r: number, axis: number): Point[] => [
  [u, axis - r],
  [u, axis + r],
]

/** Where strokes 0 and full stand in the width of the drawing (0 … 1): a chart under it takes them for its axis. */
export function strokeAxisOf(fork: ForkParameters): { from: number; to: number } {
  const { x, width } = extent(forkShapes(fork), true)
  const zero = ringFrom(forkStations(fork), 0)
  return { from: (zero - x) / width, to: (zero + fork.travel * 1e3 - x) / width }
}

/** A line from the words to a dot inside their part. */
function Leader({ place }: { place: CalloutPlace }) {
  const [along, across] = place.anchor
  const y = (value: number) => px(axisOf('left', true) - value)
  return (
    <g className="cutaway-leader">
      <path
        d={`M${px(along)} ${y(across)}L${px(place.from + 6)} ${y(wordsAcross)}`}
        stroke="var(--ink)"
        strokeWidth={0.5}
        fill="none"
      />
      <circle cx={px(along)} cy={y(across)} r={1.4} fill="var(--ink)" />
    </g>
  )
}

/** The plumb bob hangs to the left: the drawing lies down. */
function Down({ word }: { word: string }) {
  return (
    <span className="down">
      <svg width={66} height={14} viewBox="0 0 66 14" aria-hidden="true" focusable="false">
        <path d="M64 7H24M64 2v10" stroke="var(--ink)" strokeWidth={1} fill="none" />
        <path d="M1 7l9 -5.5h13v11h-13z" fill="var(--ink)" />
      </svg>
      {word}
    </span>
  )
}

/** The fork as it is cut, to scale along and across; the legs stand closer than they do. */
export function ForkCutaway({ fork, view = 'both-legs', label, words }: ForkCutawayProps) {
  const id = useId()
  const both = view === 'both-legs'
  const shapes = forkShapes(fork, view)
  const { x, y, width, height } = extent(shapes, both)
  const places = words && both ? calloutPlaces(fork) : []
  const drawing = (
    <svg
      className="cutaway"
      viewBox={`${px(x)} ${px(y)} ${px(width)} ${px(height)}`}
      width="100%"
      role="img"
      aria-label={label}
    >
      <defs>
        <Hatchings id={id} />
      </defs>
      {shapes.map((shape, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the list is made anew from the table, in the drawing's order
        <Part key={index} shape={shape} both={both} id={id} />
      ))}
      {places.map((place) => (
        <Leader key={place.part} place={place} />
      ))}
    </svg>
  )
  if (!words || !both) return drawing
  const share = (value: number, of: number) => `${px((value / of) * 100)}%`
  return (
    <figure className="cutaway-figure">
      <p className="cutaway-leg">{words.rightLeg}</p>
      <div className="cutaway-drawing">
        {drawing}
        <dl className="cutaway-callouts">
          {places.map(({ part, from }) => (
            <div
              key={part}
              className="cutaway-callout"
              style={{ left: share(from - x, width), top: share(legGap / 2 - y, height) }}
            >
              <dt>
                {words.callouts[part].figures.map(({ value, unit }) => (
                  <span key={unit} translate="no">
                    {value}
                    <small>{unit}</small>
                  </span>
                ))}
              </dt>
              <dd>{words.callouts[part].words}</dd>
            </div>
          ))}
        </dl>
      </div>
      <p className="cutaway-leg">
        {words.leftLeg}
        <Down word={words.down} />
      </p>
    </figure>
  )
}
