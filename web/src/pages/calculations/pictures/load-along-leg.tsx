/** The weight over the front axle and its two parts: along the leg, which the spring carries, and across it, which the bushings do. */
import { say } from '@legwork/trade'
import { Arrow, type At } from '../../../charts/dimension.tsx'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

const height = 336
const radius = 58

interface WordsProps {
  at: At
  figure: string
  words: string
  anchor: 'start' | 'end'
  size?: number
}

function Force({ at: [x, y], figure, words, anchor, size = 17 }: WordsProps) {
  return (
    <>
      <Lettering x={px(x)} y={px(y)} textAnchor={anchor} fontSize={size} halo>
        {figure}
      </Lettering>
      <BookWords x={px(x)} y={px(y + 18)} textAnchor={anchor} halo>
        {words}
      </BookWords>
    </>
  )
}

export function LoadAlongLegPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const angle = (numberAt(input, ['headAngle'], 65) * Math.PI) / 180
  const [load, sideLoad] = [numberAt(output, ['load']), numberAt(output, ['sideLoad'])]
  const weight = Math.hypot(load, sideLoad)
  // It rides to the right: the crown stands behind the axle.
  const axle: At = [Math.min(width - radius - 12, width * 0.66), 256]
  const up: At = [-Math.cos(angle), -Math.sin(angle)]
  const point = (distance: number, aside = 0): At => [
    axle[0] + up[0] * distance - up[1] * aside,
    axle[1] + up[1] * distance + up[0] * aside,
  ]
  const tube = (start: number, end: number, half: number) => {
    const corners = [point(start, -half), point(end, -half), point(end, half), point(start, half)]
    return `M${corners.map(([x, y]) => `${px(x)} ${px(y)}`).join('L')}z`
  }
  const pen = { stroke: 'var(--ink)', strokeWidth: 1.25, strokeLinejoin: 'round' } as const
  const [axisFrom, axisTo] = [point(-30), point(258)]
  // The triangle hangs from the crown; its longest side is the weight.
  const from = point(222)
  const size = 128 / Math.max(1, weight)
  const down: At = [from[0], from[1] + weight * size]
  const onLeg: At = [from[0] - up[0] * load * size, from[1] - up[1] * load * size]
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      overflow="visible"
      role="img"
      aria-label={say('calc.picture.fork-load')}
    >
      <path d={`M8 ${axle[1] + radius}H${width - 8}`} stroke="var(--ink)" strokeWidth={1.4} />
      <circle cx={px(axle[0])} cy={axle[1]} r={radius - 3} fill="none" stroke="var(--hair)" strokeWidth={6} />
      <circle cx={px(axle[0])} cy={axle[1]} r={radius} fill="none" {...pen} />
      <path d={tube(0, 120, 9)} fill="var(--alloy)" {...pen} />
      <path d={tube(104, 204, 6)} fill="var(--steel)" {...pen} />
      <path d={tube(200, 216, 15)} fill="var(--alloy)" {...pen} />
      <circle cx={px(axle[0])} cy={axle[1]} r={6} fill="var(--paper)" {...pen} />
      <path
        d={`M${px(axisFrom[0])} ${px(axisFrom[1])}L${px(axisTo[0])} ${px(axisTo[1])}`}
        stroke="var(--ink)"
        strokeWidth={0.6}
        strokeDasharray="16 3 2.5 3"
      />
      <path
        d={`M${px(axle[0] - 84)} ${axle[1]}A84 84 0 0 1 ${px(axle[0] + 84 * up[0])} ${px(axle[1] + 84 * up[1])}M${px(axle[0])} ${axle[1]}H${px(axle[0] - 96)}`}
        stroke="var(--ink)"
        strokeWidth={0.8}
        fill="none"
      />
      <Lettering x={px(axle[0] - 86)} y={px(axle[1] - 32)} textAnchor="end" fontSize={16} halo>
        {written(numberAt(input, ['headAngle']), 'angle')}
      </Lettering>
      <Arrow from={from} to={onLeg} />
      <Arrow from={onLeg} to={down} />
      <Arrow from={from} to={down} look="way" />
      <Force
        at={[onLeg[0] + 22, (from[1] + onLeg[1]) / 2]}
        figure={written(load, 'force')}
        words={say('calc.picture.fork-load.along')}
        anchor="start"
        size={22}
      />
      <Force
        at={[down[0] - 14, down[1] + 4]}
        figure={written(sideLoad, 'force')}
        words={say('calc.picture.fork-load.across')}
        anchor="end"
      />
      <Force
        at={[from[0] - 14, (from[1] + down[1]) / 2 - 18]}
        figure={written(weight, 'force')}
        words={say('calc.picture.fork-load.weight')}
        anchor="end"
      />
    </svg>
  )
}
