/** A leak over the time between two readings, beside what no leak would have shown. */
import { say } from '@legwork/trade'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { valueAt } from '../draft.ts'
import { KeyLine, KeyOf, LineKey } from './line-key.tsx'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'

const numberAt = (value: unknown, path: string[], otherwise = 0): number => {
  const found = valueAt(value, path)
  return typeof found === 'number' ? found : otherwise
}
const steps = Array.from({ length: 41 }, (_, index) => index / 40)

export function LeakDownPicture({ input, output, width }: PictureProps) {
  const duration = numberAt(input, ['duration'])
  const [start, end] = [numberAt(input, ['start', 'reading']), numberAt(input, ['end', 'reading'])]
  const expected = numberAt(output, ['expectedReading'])
  const [from, to] = [numberAt(output, ['pressureStart']), numberAt(output, ['pressureEnd'])]
  const time = useReadAs('duration', duration)
  const pressure = useReadAs('pressure', start)
  /** 90 % of a reading that is rounded to the gauge's resolution. */
  const half = 0.45 * numberAt(input, ['gaugeResolution'], 6894.757)
  const decay = steps.map((share) => ({
    x: time.of(share * duration),
    y: pressure.of(to > 0 && from > 0 ? from * (to / from) ** share : from + (to - from) * share),
  }))
  const last = time.of(duration)
  const across = roundAxis([0, last])
  const up = roundAxis([start, expected, end - half, start + half, from, to].map(pressure.of), false)
  return (
    <figure>
      <Plot
        width={width}
        across={{ ...across, unit: time.unit, words: say('calc.picture.time') }}
        up={{ ...up, unit: pressure.unit, words: say('calc.out.reading') }}
        label={say('calc.picture.leak-down')}
      >
        {(frame) => {
          const whisker = (x: number, reading: number) =>
            `M${px(frame.x(x))} ${px(frame.y(pressure.of(reading - half)))}V${px(frame.y(pressure.of(reading + half)))}`
          return (
            <>
              <PlotLine
                frame={frame}
                look="second"
                points={[
                  { x: 0, y: pressure.of(start) },
                  { x: last, y: pressure.of(expected) },
                ]}
              />
              <PlotLine frame={frame} points={decay} />
              <path d={whisker(0, start) + whisker(last, end)} stroke="var(--hand)" strokeWidth={1.6} />
              <PlotReading frame={frame} at={{ x: 0, y: pressure.of(start) }} />
              <PlotReading frame={frame} at={{ x: last, y: pressure.of(end) }} />
            </>
          )
        }}
      </Plot>
      <LineKey>
        <KeyOf sample={<KeyLine />}>{say('calc.picture.chamber')}</KeyOf>
        <KeyOf sample={<KeyLine look="second" />}>{say('calc.picture.no-leak')}</KeyOf>
        <KeyOf
          sample={
            <>
              <path d="M22 0v16" stroke="var(--hand)" strokeWidth={1.6} />
              <circle cx={22} cy={8} r={4} fill="var(--paper)" stroke="var(--hand)" strokeWidth={1.8} />
            </>
          }
        >
          {say('calc.picture.gauge')}
        </KeyOf>
      </LineKey>
    </figure>
  )
}
