/** The life line of a unit: owners, visits and services over time, and under them what was read, one row a quantity. */
import { type Due, isWordKey, type Rider, say } from '@legwork/trade'
import type { ScaleLinear } from 'd3-scale'
import { Hatch, usePatternId } from '../../charts/hatch.tsx'
import { inARow } from '../../charts/in-a-row.ts'
import { BookWords, Lettering } from '../../charts/lettering.tsx'
import { px } from '../../charts/number-text.ts'
import { useOwnWidth } from '../../charts/use-own-width.ts'
import { day } from '../../figures/moment.ts'
import { readAs } from '../job/read-as.ts'
import { useShownText } from '../job/readings.tsx'
import type { Life, LifeTrack, Ridden } from './life-of.ts'
import { type LifeTick, lifeScale, lifeTicks, placeLabels } from './life-places.ts'

/** What was measured, in words; its own name where the catalogue has none. */
export function nameOfReading(what: string, leg: 'left' | 'right' | null): string {
  const key = `measure.${what}`
  // Words of these names have no parameters, so one of them stands for all.
  const name = isWordKey(key) ? say(key as 'measure.friction') : what
  return leg ? say('life.of-leg', { what: name, leg: say(`leg.${leg}`) }) : name
}

interface RowProps {
  scale: ScaleLinear<number, number>
  ticks: readonly LifeTick[]
  width: number
}

/** Names and dates are data: never put into another language. */
const data = { translate: 'no' }
const monthName = new Intl.DateTimeFormat('en-GB', { month: 'long', timeZone: 'UTC' })

function Months({ scale, ticks, height }: RowProps & { height: number }) {
  return ticks.map(({ at, year }) => (
    <path
      key={at}
      d={`M${px(scale(at))} 0V${height}`}
      stroke={year ? 'var(--rule)' : 'var(--hair)'}
      strokeWidth={year ? 1.4 : 1}
    />
  ))
}

/** Who brought it, as a dimension from their first job to the next rider's. */
function Owners({ life, riders, scale, now }: RowProps & { life: Life; riders: readonly Rider[]; now: number }) {
  return life.owners.map(({ rider, from, until }) => {
    const [x0, x1] = [scale(from), Math.max(scale(from) + 24, scale(until ?? now))]
    return (
      <g key={from}>
        <path
          d={`M${px(x0)} 18v14M${px(x1)} 18v14M${px(x0)} 25H${px(x1)}`}
          stroke="var(--ink)"
          strokeWidth={0.8}
          fill="none"
        />
        <path
          d={`M${px(x0)} 25l9 -2.2v4.4zM${px(x1)} 25l-9 -2.2v4.4z`}
          fill="var(--ink)"
          visibility={x1 - x0 > 22 ? 'visible' : 'hidden'}
        />
        <Lettering x={px(x0 + 4)} y={14} fontSize={16} fontWeight={600} halo {...data}>
          {riders.find(({ id }) => id === rider)?.name ?? say('bench.no-rider')}
        </Lettering>
      </g>
    )
  })
}

const ruleAt = 78

interface LineProps extends RowProps {
  life: Life
  ridden: readonly Ridden[]
  due: Due | null
  now: number
  numberOf: (stream: LifeVisitStream) => string | null
}
type LifeVisitStream = Life['visits'][number]['stream']

/** The rule itself: heavy so far, thin to come; a post for a service, a tick for another visit, violet while it is here. */
function Line({ life, ridden, due, now, numberOf, scale, width }: LineProps) {
  const hatch = usePatternId()
  const first = life.visits[0]
  const places = inARow(
    life.visits.map(({ from }) => scale(from)),
    34,
    width - 16,
  )
  if (!first) return null
  return (
    <>
      <path d={`M${px(scale(first.from))} ${ruleAt}H${px(scale(now))}`} stroke="var(--ink)" strokeWidth={5} />
      {due && (
        <>
          <defs>
            <Hatch id={hatch} pitch={5} width={1} opacity={0.7} />
          </defs>
          <path d={`M${px(scale(now))} ${ruleAt}H${width}`} stroke="var(--ink)" strokeWidth={1} />
          <rect
            x={px(scale(Date.parse(due.early)))}
            y={ruleAt - 12}
            width={px(Math.max(2, scale(Date.parse(due.late)) - scale(Date.parse(due.early))))}
            height={12}
            fill={`url(#${hatch})`}
            stroke="var(--ink)"
            strokeWidth={0.8}
          />
          <path d={`M${px(scale(Date.parse(due.date)))} ${ruleAt - 18}v24`} stroke="var(--ink)" strokeWidth={2.4} />
          <BookWords
            x={px(Math.min(width, scale(Date.parse(due.date)) + 70))}
            y={ruleAt + 40}
            textAnchor="end"
            fontSize={15}
            halo
          >
            {say('bench.due', { day: day(due.date) })}
          </BookWords>
        </>
      )}
      {life.visits.map(({ stream, from, until, services, state }, index) => {
        const x = scale(from)
        const at = places[index] ?? x
        const here = until === null && state !== 'stopped' && state !== 'called-off'
        return (
          <g key={stream}>
            {here && (
              <path d={`M${px(x)} ${ruleAt}H${px(Math.max(x + 8, scale(now)))}`} stroke="var(--hand)" strokeWidth={5} />
            )}
            <path
              d={`M${px(at)} 56L${px(x)} 64V${services.length > 0 ? ruleAt + 10 : ruleAt}`}
              stroke="var(--ink)"
              strokeWidth={services.length > 0 ? 5 : 1.4}
              strokeLinejoin="round"
              fill="none"
            />
            {state === 'stopped' && (
              <path
                d={`M${px(x - 7)} ${ruleAt - 10}h14M${px(x)} ${ruleAt - 14}v24`}
                stroke="var(--ink)"
                strokeWidth={4}
              />
            )}
            <Lettering x={px(at)} y={51} textAnchor="middle" fontSize={15} fontWeight={600} halo>
              {numberOf(stream) ?? '–'}
            </Lettering>
          </g>
        )
      })}
      {ridden.map(({ from, until, hours }) => {
        const [x0, x1] = [scale(from), scale(until)]
        return x1 - x0 > 60 ? (
          <BookWords key={from} x={px((x0 + x1) / 2)} y={ruleAt + 22} textAnchor="middle" halo>
            {say('life.hours', { hours: Math.round(hours) })}
          </BookWords>
        ) : null
      })}
    </>
  )
}

const trackHeight = 54

function Track({ track, scale, ticks, width }: RowProps & { track: LifeTrack }) {
  const shown = useShownText()
  const values = track.readings.map(({ reading }) => reading.value)
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const y = (value: number): number => (high > low ? 44 - ((value - low) / (high - low)) * 16 : 36)
  const xs = inARow(
    track.readings.map(({ at }) => scale(at)),
    13,
    width - 6,
  )
  const { fine, share } = readAs(track.what)
  const texts = track.readings.map(({ reading }) => shown(reading.value, reading.measure, fine, share))
  const labels = placeLabels(
    xs,
    texts.map((text) => text.length * 8.4),
    width,
  )
  const points = track.readings.map(({ reading }, index) => ({ x: xs[index] ?? 0, y: y(reading.value) }))
  return (
    <svg
      width={width}
      height={trackHeight}
      viewBox={`0 0 ${width} ${trackHeight}`}
      overflow="visible"
      aria-hidden="true"
    >
      <Months scale={scale} ticks={ticks} width={width} height={trackHeight} />
      <path
        d={`M${points.map(({ x, y: up }) => `${px(x)} ${px(up)}`).join('L')}`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth={1.2}
      />
      {points.map(({ x, y: up }, index) => (
        <circle
          // biome-ignore lint/suspicious/noArrayIndexKey: readings of one row keep their order
          key={index}
          cx={px(x)}
          cy={px(up)}
          r={4.5}
          fill={track.readings[index]?.phase === 'done' ? 'var(--hand)' : 'var(--paper)'}
          stroke="var(--hand)"
          strokeWidth={1.8}
        />
      ))}
      {labels.map(({ index, x, anchor, where }) => (
        <Lettering
          key={index}
          x={px(x)}
          y={px((points[index]?.y ?? 0) + (where === 'over' ? -10 : 5))}
          textAnchor={anchor}
          fontSize={15}
          fill="var(--hand)"
          halo
        >
          {texts[index]}
        </Lettering>
      ))}
    </svg>
  )
}

export interface LifeLineProps {
  life: Life
  ridden: readonly Ridden[]
  due: Due | null
  riders: readonly Rider[]
  /** [ms] */
  now: number
  numberOf: (stream: LifeVisitStream) => string | null
  /** Spoken instead of the picture; the jobs below tell the same line by line. */
  label: string
}

/** The rows share one scale of time; on a phone the names stand over their rows. */
export function LifeLine({ life, ridden, due, riders, now, numberOf, label }: LifeLineProps) {
  const [place, width] = useOwnWidth(676)
  const scale = lifeScale(life, Math.max(now, due ? Date.parse(due.late) : now), width)
  const ticks = lifeTicks(scale)
  const row = { scale, ticks, width }
  const months = ticks.filter(({ at }) => scale(at) < width - 40)
  return (
    <div className="life-line" role="img" aria-label={label}>
      <p className="name book">{say('life.rows')}</p>
      <div ref={place}>
        <svg width={width} height={124} viewBox={`0 0 ${width} 124`} overflow="visible" aria-hidden="true">
          <Months {...row} height={124} />
          <Owners {...row} life={life} riders={riders} now={now} />
          <Line {...row} life={life} ridden={ridden} due={due} now={now} numberOf={numberOf} />
        </svg>
      </div>
      {life.tracks.map((track) => (
        <div className="track" key={`${track.what} ${track.leg} ${track.readings[0]?.reading.measure}`}>
          <p className="name">{nameOfReading(track.what, track.leg)}</p>
          <div>
            <Track {...row} track={track} />
          </div>
        </div>
      ))}
      <p className="name" />
      <svg width={width} height={24} viewBox={`0 0 ${width} 24`} overflow="visible" aria-hidden="true">
        {months.map(({ at, year }) => (
          <Lettering
            key={at}
            x={px(scale(at) + 4)}
            y={16}
            fontSize={14}
            fontWeight={400}
            fill="var(--graphite)"
            {...data}
          >
            {year ? String(new Date(at).getUTCFullYear()) : monthName.format(at)}
          </Lettering>
        ))}
      </svg>
    </div>
  )
}
