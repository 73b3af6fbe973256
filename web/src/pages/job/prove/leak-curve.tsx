/** A leak-down over its time: what the gauge showed, what it would have shown had nothing been lost, what was in the chamber. */
import '../bench-tests/bench-test-words.ts'
import { fromSI, type LeakDown } from '@legwork/engine'
import { say } from '@legwork/trade'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { useOwnWidth } from '../../../charts/use-own-width.ts'
import { useMeasures } from '../../../figures/world.tsx'

interface LeakCurveProps {
  found: LeakDown
  /** As the gauge showed them [Pa]. */
  start: number
  end: number
  minutes: number
  /** What a reading is rounded to [Pa]. */
  resolution: number
}

/** 90 % of a reading that is rounded lie within this share of its step to either side. */
const nineInTen = 0.45
const steps = Array.from({ length: 41 }, (_, index) => index / 40)

export function LeakCurve({ found, start, end, minutes, resolution }: LeakCurveProps) {
  const [ref, width] = useOwnWidth(410)
  const measure = useMeasures().pressure
  const read = (pascal: number) => fromSI(pascal, measure)
  // Hours where it stood over night.
  const long = minutes >= 180
  const last = long ? minutes / 60 : minutes
  const half = nineInTen * resolution
  const { expectedReading, pressureStart: from, pressureEnd: to } = found
  const inside = (share: number) => (from > 0 && to > 0 ? from * (to / from) ** share : from + (to - from) * share)
  const readings = [start, expectedReading, from, to, end - half, start + half].map(read)
  return (
    <figure ref={ref} className="leak-curve">
      <Plot
        width={width}
        height={230}
        across={{ ...roundAxis([0, last]), unit: long ? 'h' : 'min', words: say('leak.time') }}
        up={{ ...roundAxis(readings, false), unit: measure, words: say('leak.pressure') }}
        label={say('leak.curve')}
      >
        {(frame) => {
          const at = (x: number, pascal: number) => ({ x, y: read(pascal) })
          const whisker = (x: number, pascal: number) =>
            `M${px(frame.x(x))} ${px(frame.y(read(pascal - half)))}V${px(frame.y(read(pascal + half)))}`
          return (
            <>
              <PlotLine frame={frame} look="second" points={[at(0, from), at(last, from), at(last, expectedReading)]} />
              <PlotLine frame={frame} points={steps.map((share) => at(share * last, inside(share)))} />
              <path d={whisker(0, start) + whisker(last, end)} stroke="var(--hand)" strokeWidth={1.6} />
              <PlotReading frame={frame} at={at(0, start)} />
              <PlotReading frame={frame} at={at(last, end)} />
            </>
          )
        }}
      </Plot>
      <figcaption className="book">{say('leak.curve.key')}</figcaption>
    </figure>
  )
}
