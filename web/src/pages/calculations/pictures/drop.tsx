/** A drop moment by moment: the stroke, and the force in the leg. */
import { say } from '@legwork/trade'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, roundAxis } from '../../../charts/plot.tsx'
import { isRecord } from '../draft.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'

interface Moment {
  time: number
  stroke: number
  force: number
}

function traceOf(output: Record<string, unknown>): Moment[] {
  if (!Array.isArray(output.trace)) return []
  return output.trace.filter(
    (one): one is Moment => isRecord(one) && ['time', 'stroke', 'force'].every((name) => typeof one[name] === 'number'),
  )
}

export function DropPicture({ output, width }: PictureProps) {
  const trace = traceOf(output)
  const last = trace.at(-1)?.time ?? 0
  const settled = typeof output.settling === 'number' ? output.settling : last
  // Nothing to see long after it has settled.
  const shown = trace.filter(({ time }) => time <= Math.min(last, settled * 1.4 + 0.1))
  const stroke = useReadAs('length', 0.1)
  const force = useReadAs('force', 1000)
  const across = { ...roundAxis(shown.map(({ time }) => time)), unit: 's', words: say('calc.picture.time') }
  const strokes = shown.map(({ time, stroke: at }) => ({ x: time, y: stroke.of(at) }))
  const forces = shown.map(({ time, force: newton }) => ({ x: time, y: force.of(newton) }))
  const deepest = typeof output.deepest === 'number' ? stroke.of(output.deepest) : null
  return (
    <>
      <Plot
        width={width}
        height={250}
        across={across}
        up={{ ...roundAxis(strokes.map(({ y }) => y)), unit: stroke.unit, words: say('calc.out.stroke') }}
        label={say('calc.picture.drop.stroke')}
      >
        {(frame) => (
          <>
            {deepest !== null && (
              <path
                d={`M${frame.left} ${px(frame.y(deepest))}H${frame.right}`}
                stroke="var(--ink)"
                strokeWidth={0.8}
                strokeDasharray="9 2.5 2 2.5"
              />
            )}
            <PlotLine frame={frame} points={strokes} />
          </>
        )}
      </Plot>
      <Plot
        width={width}
        height={210}
        across={across}
        up={{ ...roundAxis(forces.map(({ y }) => y)), unit: force.unit, words: say('calc.out.force') }}
        label={say('calc.picture.drop.force')}
      >
        {(frame) => <PlotLine frame={frame} points={forces} />}
      </Plot>
    </>
  )
}
