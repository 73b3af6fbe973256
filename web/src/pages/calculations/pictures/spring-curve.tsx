/** Force over the stroke, finely drawn whatever number of points was asked for. */
import { runCalculation } from '@legwork/contract/calculations/index.ts'
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { BookWords } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, roundAxis } from '../../../charts/plot.tsx'
import { isRecord } from '../draft.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'

interface Point {
  stroke: number
  force: number
}

function pointsOf(answer: unknown): Point[] {
  if (!isRecord(answer) || !Array.isArray(answer.points)) return []
  return answer.points.filter(
    (point): point is Point => isRecord(point) && typeof point.stroke === 'number' && typeof point.force === 'number',
  )
}

function drawn(asked: Record<string, unknown>): Point[] {
  const answer = runCalculation('spring-curve', asked)
  return answer.ok ? pointsOf(answer.output) : []
}

export function SpringCurvePicture({ asked, output, width }: PictureProps) {
  const fine = useMemo(() => drawn({ ...asked, points: 121 }), [asked])
  const isFast = typeof asked.exponent === 'number' && asked.exponent > 1
  const slow = useMemo(() => (isFast ? drawn({ ...asked, points: 121, exponent: 1 }) : []), [asked, isFast])
  const points = fine.length > 0 ? fine : pointsOf(output)
  const stroke = useReadAs('length', 0.1)
  const force = useReadAs('force', 1000)
  const inMeasure = (all: readonly Point[]) => all.map((one) => ({ x: stroke.of(one.stroke), y: force.of(one.force) }))
  const [main, other] = [inMeasure(points), inMeasure(slow)]
  const across = { from: 0, to: Math.max(...main.map(({ x }) => x), 0) || 1 }
  const up = roundAxis([...main, ...other].map(({ y }) => y))
  const wordsAt = main[Math.floor(main.length * 0.62)]
  return (
    <Plot
      width={width}
      across={{ ...across, unit: stroke.unit, words: say('calc.out.stroke') }}
      up={{ ...up, unit: force.unit, words: say('calc.out.force') }}
      label={say('calc.picture.spring-curve')}
    >
      {(frame) => (
        <>
          {other.length > 0 && <PlotLine frame={frame} points={other} look="second" />}
          <PlotLine frame={frame} points={main} />
          {wordsAt && (
            <BookWords halo x={px(frame.x(wordsAt.x) - 10)} y={px(frame.y(wordsAt.y) - 12)} textAnchor="end">
              {isFast ? say('calc.picture.fast') : say('calc.picture.slow')}
            </BookWords>
          )}
        </>
      )}
    </Plot>
  )
}
