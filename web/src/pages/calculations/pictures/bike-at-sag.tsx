/** The bike before and under its rider: what each end sinks, what the bottom bracket does, how the head angle turns. */
import { say } from '@legwork/trade'
import { type At, Dimension } from '../../../charts/dimension.tsx'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

/** Sinking is drawn three times as large: true to scale it would be a hair. */
const larger = 3

export function BikeAtSagPicture({ input, output, width: room }: PictureProps) {
  // Drawn at one height, so at most as wide as a bike looks right.
  const width = Math.min(room, 430)
  const written = useWritten()
  const [wheelbase, rearCentre] = [numberAt(input, ['wheelbase']), numberAt(input, ['rearCentre'])]
  const headAngle = numberAt(input, ['headAngle'])
  const front = numberAt(output, ['sags', 'fork', 'stroke']) * Math.sin((headAngle * Math.PI) / 180)
  const rear = numberAt(output, ['sags', 'rearTravel'])
  const drop = numberAt(output, ['bottomBracketDrop'])
  const [left, right] = [64, width - 96]
  const scale = (right - left) / wheelbase
  const [axleY, mountY] = [208, 112]
  const radius = Math.min(58, 0.34 * scale)
  const bottomX = left + rearCentre * scale
  const sunk = (x: number) => (rear + ((front - rear) * (x - left)) / (right - left)) * scale * larger
  const slope = (headAngle * Math.PI) / 180
  const onLeg = (distance: number): At => [right - distance * Math.cos(slope), axleY - distance * Math.sin(slope)]
  // Enough of a frame to see it sink and turn: mount, head tube, bottom bracket.
  const [crown, head] = [onLeg(108), onLeg(152)]
  const [mount, bottom]: readonly [At, At] = [
    [left + 30, mountY],
    [bottomX, axleY - 26],
  ]
  const lowered = ([x, y]: At, sinks: boolean): At => [x, y + (sinks ? sunk(x) : 0)]
  const line = (places: readonly At[]) => `M${places.map(([x, y]) => `${px(x)} ${px(y)}`).join('L')}`
  const frame = (sinks: boolean) => line([mount, head, crown, bottom, mount].map((place) => lowered(place, sinks)))
  const fork = (sinks: boolean) => line([lowered(crown, sinks), [right, axleY]])
  const pen = { stroke: 'var(--ink)', strokeLinejoin: 'round', fill: 'none' } as const
  return (
    <figure>
      <figcaption className="book">{say('calc.picture.both-ends.marks')}</figcaption>
      <svg
        width={width}
        height={300}
        viewBox={`0 0 ${width} 300`}
        overflow="visible"
        role="img"
        aria-label={say('calc.picture.both-ends')}
      >
        <path d={`M8 ${px(axleY + radius)}H${width - 8}`} stroke="var(--ink)" strokeWidth={1.4} />
        {[left, right].map((x) => (
          <g key={x}>
            <circle cx={px(x)} cy={axleY} r={px(radius)} {...pen} strokeWidth={1.25} />
            <circle cx={px(x)} cy={axleY} r={4} fill="var(--paper)" stroke="var(--ink)" strokeWidth={1.25} />
          </g>
        ))}
        <path d={frame(false) + fork(false)} {...pen} strokeWidth={0.9} strokeDasharray="9 2.5 2 2.5 2 2.5" />
        <path d={frame(true)} {...pen} strokeWidth={2.2} />
        <path d={fork(true)} {...pen} strokeWidth={5} />
        <path d={line([[left, axleY], lowered(bottom, true)])} {...pen} strokeWidth={2.2} />
        <circle
          cx={px(bottomX)}
          cy={px(bottom[1] + sunk(bottomX))}
          r={6}
          fill="var(--paper)"
          stroke="var(--ink)"
          strokeWidth={1.6}
        />
        <path
          d={`M${left - 42} ${mountY}H${px(mount[0])}M${px(crown[0])} ${px(crown[1])}H${right + 32}`}
          {...pen}
          strokeWidth={0.6}
        />
        <Dimension
          from={[left - 34, mountY]}
          to={[left - 34, mountY + rear * scale * larger]}
          words={written(rear, 'length')}
          side="left"
        />
        <Dimension
          from={[right + 24, crown[1]]}
          to={[right + 24, crown[1] + front * scale * larger]}
          words={written(front, 'length')}
          side="left"
        />
        <Lettering x={px(bottomX + 14)} y={px(axleY - 8 + sunk(bottomX))} fontSize={17} halo>
          {written(drop, 'length')}
        </Lettering>
        <BookWords x={px(bottomX + 14)} y={px(axleY + 10 + sunk(bottomX))} halo>
          {say('calc.picture.both-ends.bracket')}
        </BookWords>
        <Lettering x={px(head[0] + 8)} y={px(head[1] - 12)} textAnchor="end" fontSize={17} halo>
          {say('calc.picture.both-ends.angle', {
            before: `${headAngle.toFixed(1)}°`,
            after: `${numberAt(output, ['headAngleAtSag']).toFixed(1)}°`,
          })}
        </Lettering>
      </svg>
    </figure>
  )
}
