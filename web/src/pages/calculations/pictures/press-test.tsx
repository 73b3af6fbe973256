/** The readings of a press, and what each hypothesis that still stands foresees. */
import { type PressQuestion, pressFits, type Spring, springCurve, supposedSpring } from '@legwork/engine'
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { BookWords } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { ChoiceName } from '../names.tsx'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'

type Asked = PressQuestion & { spring: Spring }
type Curve = readonly { stroke: number; force: number }[]

/** The spring of one fit at one press, from full length to the deepest stop. */
function curveOf({ spring, ambient = 101_325 }: Asked, fit: Fit, pressure: number, deepest: number): Curve {
  const there = supposedSpring(spring, fit.name, fit.estimate ?? 0, fit.scale, pressure, ambient)
  const filled = spring.kind === 'coil' ? {} : { pressure: there.pressure }
  const { points } = springCurve(there.spring, { ...filled, ambient, points: 81 })
  return points.filter(({ stroke }) => stroke <= deepest * beyond)
}

type Fit = ReturnType<typeof pressFits>[number]

/** Curves go a little beyond the deepest stop. */
const beyond = 1.06

/** How much worse than the best a hypothesis may be and still be drawn, beside the sheet's own. */
const near = 6

interface Drawn {
  fit: Fit
  curves: readonly Curve[]
  isBest: boolean
}

function drawnOf(asked: Asked): Drawn[] {
  const fits = pressFits(asked.spring, asked)
  const best = fits[0]
  if (!best) return []
  const deepest = Math.max(...asked.presses.flatMap(({ readings }) => readings.map(({ stroke }) => stroke)))
  return fits
    .filter(({ name, bic }) => name === 'as-sheet' || bic - best.bic <= near)
    .map((fit) => ({
      fit,
      isBest: fit === best,
      curves: asked.presses.map(({ pressure = 0 }) => curveOf(asked, fit, pressure, deepest)),
    }))
}

export function PressTestPicture({ input, width }: PictureProps) {
  // What the schema of `press-test` gave, and what the engine has answered already.
  const asked = input as Asked
  const drawn = useMemo(() => drawnOf(asked), [asked])
  const stroke = useReadAs('length', 0.1)
  const force = useReadAs('force', 1000)
  const readings = asked.presses.flatMap((press) => press.readings)
  const point = (at: number, newton: number) => ({ x: stroke.of(at), y: force.of(newton) })
  const forces = [
    ...readings.map(({ pressing }) => force.of(pressing)),
    ...drawn.flatMap(({ curves }) => curves.flatMap((curve) => curve.map((one) => force.of(one.force)))),
  ]
  return (
    <figure>
      <Plot
        width={width}
        height={380}
        across={{
          from: 0,
          to: stroke.of(beyond * Math.max(...readings.map((one) => one.stroke))),
          unit: stroke.unit,
          words: say('calc.out.stroke'),
        }}
        up={{ ...roundAxis(forces), unit: force.unit, words: say('calc.out.force') }}
        label={say('calc.picture.press-test')}
      >
        {(frame) => (
          <>
            {drawn.toReversed().flatMap(({ fit, curves, isBest }) =>
              curves.map((curve, press) => (
                <PlotLine
                  // biome-ignore lint/suspicious/noArrayIndexKey: presses keep their places
                  key={`${fit.name}${press}`}
                  frame={frame}
                  look={isBest ? 'heavy' : fit.name === 'as-sheet' ? 'before' : 'second'}
                  points={curve.map((one) => point(one.stroke, one.force))}
                />
              )),
            )}
            {readings.map((one, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: readings have no name of their own
              <g key={index}>
                <PlotReading frame={frame} at={point(one.stroke, one.pressing)} />
                <PlotReading frame={frame} at={point(one.stroke, one.releasing)} way="triangle" />
              </g>
            ))}
            <BookWords x={px(frame.left + 12)} y={frame.top + 16} halo>
              {say('calc.picture.press.marks')}
            </BookWords>
          </>
        )}
      </Plot>
      <ul className="calc-lines-key">
        {drawn.map(({ fit, isBest }) => (
          <li key={fit.name}>
            <svg width={44} height={10} aria-hidden="true">
              <path
                d="M1 5H43"
                stroke="var(--ink)"
                strokeWidth={isBest ? 2.6 : fit.name === 'as-sheet' ? 1.4 : 1.8}
                strokeDasharray={isBest ? undefined : fit.name === 'as-sheet' ? '0.1 4' : '8 4'}
                strokeLinecap={fit.name === 'as-sheet' && !isBest ? 'round' : undefined}
              />
            </svg>
            <ChoiceName word={fit.name} path={['name']} />
          </li>
        ))}
      </ul>
    </figure>
  )
}
