import { Fragment } from 'react'
import { squares } from './force-stroke-geometry.ts'
import type { Framed } from './force-stroke-props.ts'
import { Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

/** Squared paper in the stated measures; forces stand left of it, so that the names of the curves have the right. */
export function Paper({ frame, fullStroke, strokeMeasure, forceMeasure, stroke }: Framed) {
  const { x, y, plot, maxForce } = frame
  const bottom = plot.top + plot.height
  const right = plot.left + plot.width
  const across = squares(fullStroke, strokeMeasure.size, plot.width)
  const up = squares(maxForce, forceMeasure.size, plot.height)
  const ink = (heavy: boolean) => ({ stroke: heavy ? 'var(--rule)' : 'var(--hair)', strokeWidth: heavy ? 1 : 0.6 })
  const lastHeavy = across.filter((square) => square.heavy).at(-1)?.at
  const highest = up.filter((square) => square.heavy).at(-1)?.at
  return (
    <>
      {across.map(({ at, heavy }) => (
        <path key={at} d={`M${px(x(at))} ${plot.top}V${bottom}`} {...ink(heavy)} />
      ))}
      {up.map(({ at, heavy }) => (
        <Fragment key={at}>
          <path d={`M${plot.left} ${px(y(at))}H${right}`} {...ink(heavy)} />
          {heavy && (
            <>
              <path d={`M${plot.left} ${px(y(at))}h-5`} stroke="var(--ink)" strokeWidth={1.2} />
              <Lettering x={plot.left - 9} y={px(y(at) + 5)} textAnchor="end" fill="var(--graphite)">
                {forceMeasure.format(at / forceMeasure.size)}
              </Lettering>
              {at === highest && (
                <Lettering x={plot.left - 9} y={px(y(at) + 21)} textAnchor="end" fill="var(--graphite)">
                  {forceMeasure.unit}
                </Lettering>
              )}
            </>
          )}
        </Fragment>
      ))}
      {across
        .filter(({ at, heavy }) => heavy && Math.abs(x(at) - x(stroke)) > (at === lastHeavy ? 34 : 21))
        .map(({ at }) => (
          <Lettering key={at} x={px(x(at))} y={bottom + 22} textAnchor="middle" fill="var(--graphite)">
            {strokeMeasure.format(at / strokeMeasure.size)}
            {at === lastHeavy ? ` ${strokeMeasure.unit}` : ''}
          </Lettering>
        ))}
    </>
  )
}
