/** The same pump put on again and again: each time the same share stays. */
import { say } from '@legwork/trade'
import { BookWords } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { valueAt } from '../draft.ts'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'

export function ReadingsOfAPumpPicture({ input, output, width }: PictureProps) {
  const list = valueAt(input, ['readings'])
  const readings = Array.isArray(list) ? list.filter((one) => typeof one === 'number') : []
  const ratio = numberAt(output, ['ratio'])
  const first = readings[0] ?? 0
  const pressure = useReadAs('pressure', first)
  /** 90 % of a reading that is rounded to the gauge's step. */
  const half = 0.45 * numberAt(input, ['gaugeResolution'], 6894.757)
  const law = readings.map((_, index) => ({ x: index + 1, y: pressure.of(first * ratio ** index) }))
  const up = roundAxis(
    [...readings.flatMap((one) => [one - half, one + half]).map(pressure.of), ...law.map(({ y }) => y)],
    false,
  )
  return (
    <Plot
      width={width}
      height={280}
      across={{
        from: 0.6,
        to: readings.length + 0.4,
        unit: '',
        words: say('calc.picture.hose.attached'),
        ticks: readings.map((_, index) => ({ at: index + 1, text: String(index + 1) })),
      }}
      up={{ ...up, unit: pressure.unit, words: say('calc.out.reading') }}
      label={say('calc.picture.hose')}
    >
      {(frame) => (
        <>
          <PlotLine frame={frame} points={law} look="second" />
          {readings.map((reading, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: readings keep their places
            <g key={index}>
              <path
                d={`M${px(frame.x(index + 1))} ${px(frame.y(pressure.of(reading - half)))}V${px(frame.y(pressure.of(reading + half)))}`}
                stroke="var(--hand)"
                strokeWidth={1.6}
              />
              <PlotReading frame={frame} at={{ x: index + 1, y: pressure.of(reading) }} />
            </g>
          ))}
          <BookWords halo x={frame.right - 8} y={frame.top + 18} textAnchor="end">
            {say('calc.picture.hose.stays', { percent: (100 * ratio).toFixed(1) })}
          </BookWords>
        </>
      )}
    </Plot>
  )
}
