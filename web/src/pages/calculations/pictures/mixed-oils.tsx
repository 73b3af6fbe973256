/** Two oils by the share of one in the other, on the scale on which shares add up: the mixture lies on the straight line. */
import { say } from '@legwork/trade'
import { scaleLinear } from 'd3-scale'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, tickText } from '../../../charts/plot.tsx'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

interface Mixture {
  /** Viscosity of the oil at the left and at the right [m²/s]. */
  ends: readonly [number, number]
  /** Share of the right one. */
  share: number
  viscosity: number
  words: string
  axis: string
}

/** Scale of D7152, viscosity in mm²/s. */
const walther = (viscosity: number) =>
  Math.log10(
    Math.log10(viscosity * 1e6 + 0.7 + Math.exp(-1.47 - 1.84 * viscosity * 1e6 - 0.51 * (viscosity * 1e6) ** 2)),
  )
/** Scale of Refutas. */
const refutas = (viscosity: number) => Math.log(Math.log(viscosity * 1e6 + 0.8))

const marks = [1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 70, 100, 150, 200, 300, 500, 1000, 2000, 5000]

function MixtureChart({
  mixture,
  scale,
  width,
  label,
}: {
  mixture: Mixture
  scale: (viscosity: number) => number
  width: number
  label: string
}) {
  const { ends, share, viscosity, words, axis } = mixture
  const ys = ends.map(scale)
  const [low, high] = [Math.min(...ys), Math.max(...ys)]
  const room = Math.max(0.004, (high - low) * 0.12)
  const inRange = marks.filter((mark) => scale(mark * 1e-6) >= low - room && scale(mark * 1e-6) <= high + room)
  const fine = scaleLinear([Math.min(...ends) * 1e6, Math.max(...ends) * 1e6], [0, 1]).ticks(5)
  let last = Number.NEGATIVE_INFINITY
  const ticks = (inRange.length >= 4 ? inRange : fine)
    .map((mark) => ({ at: scale(mark * 1e-6), text: tickText(mark) }))
    .filter(({ at }) => {
      const isFar = at - last >= (high - low + 2 * room) / 9
      if (isFar) last = at
      return isFar
    })
  return (
    <Plot
      width={width}
      height={290}
      across={{ from: 0, to: 100, unit: '%', words: axis }}
      up={{ from: low - room, to: high + room, unit: 'mm²/s', words: say('calc.field.viscosity'), ticks }}
      label={label}
    >
      {(frame) => {
        const [x, y] = [frame.x(share * 100), frame.y(scale(viscosity))]
        const isLeft = x > (frame.left + frame.right) / 2
        return (
          <>
            <path
              d={`M${frame.left} ${px(y)}H${px(x)}V${frame.bottom}`}
              fill="none"
              stroke="var(--ink)"
              strokeWidth={1}
              strokeDasharray="9 2.5 2 2.5"
            />
            <PlotLine
              frame={frame}
              points={[
                { x: 0, y: ys[0] ?? 0 },
                { x: 100, y: ys[1] ?? 0 },
              ]}
            />
            {ys.map((end, index) => (
              <PlotReading key={index === 0 ? 'left' : 'right'} frame={frame} at={{ x: index * 100, y: end }} />
            ))}
            <circle cx={px(x)} cy={px(y)} r={4.5} fill="var(--ink)" />
            <Lettering
              halo
              x={px(x + (isLeft ? -12 : 12))}
              y={px(y + (ends[1] > ends[0] === isLeft ? -12 : 24))}
              textAnchor={isLeft ? 'end' : 'start'}
              fontSize={17}
            >
              {words}
            </Lettering>
          </>
        )
      }}
    </Plot>
  )
}

export function BlendPicture({ input, output, width }: PictureProps) {
  const share = numberAt(output, ['fractionOfB'])
  const basis = output.basis === 'mass' ? 'mass' : 'volume'
  const mixture: Mixture = {
    ends: [numberAt(input, ['a']), numberAt(input, ['b'])],
    share,
    viscosity: numberAt(input, ['target']),
    words: say('calc.picture.blend.share', { percent: tickText(Number((100 * share).toPrecision(3))) }),
    axis: say(`calc.picture.blend.${basis}`),
  }
  return (
    <MixtureChart
      mixture={mixture}
      scale={basis === 'mass' ? refutas : walther}
      width={width}
      label={say('calc.picture.blend')}
    />
  )
}

export function ResidualOilPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const [residual, fill] = [numberAt(input, ['residualVolume']), numberAt(input, ['fillVolume'])]
  const viscosity = numberAt(output, ['viscosity'])
  const mixture: Mixture = {
    ends: [numberAt(input, ['fresh']), numberAt(input, ['old'])],
    share: residual / (residual + fill),
    viscosity,
    words: written(viscosity, 'viscosity'),
    axis: say('calc.picture.residual.share'),
  }
  return <MixtureChart mixture={mixture} scale={walther} width={width} label={say('calc.picture.residual')} />
}
