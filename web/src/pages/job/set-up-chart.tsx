/** Force over the stroke, slow and fast from sag, with the load and the wanted sag. */
import { springCurve } from '@legwork/engine'
import { say } from '@legwork/trade'
import { type ReactNode, useMemo, useState } from 'react'
import { ForceStroke } from '../../charts/force-stroke.tsx'
import { useOwnWidth } from '../../charts/use-own-width.ts'
import { chamberFigures } from '../../cutaway/chamber-figures.ts'
import { type CutawayWords, ForkCutaway, strokeAxisOf } from '../../cutaway/fork-cutaway.tsx'
import { forkOfSheet } from '../../cutaway/fork-of-sheet.ts'
import type { ForkParameters } from '../../cutaway/fork-parameters.ts'
import { measureFor, shown } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'
import { useShownText } from './readings.tsx'
import { airSpringOf, loadDoubt, type StartInputs } from './start-pressure.ts'
import './set-up.css'

/** Pressure and volume of each chamber, where they act. */
function useCutawayWords(): (fork: ForkParameters) => CutawayWords | null {
  const person = useMeasures()
  return (fork) => {
    const figures = chamberFigures(fork)
    if (!figures) return null
    const of = (kind: 'pressure' | 'volume' | 'force', value: number) => {
      const { number, unit } = shown(value, measureFor(kind, person))
      return { value: number, unit }
    }
    const force = (value: number) => Object.values(of('force', value)).join(' ')
    const chamber = ({ pressure, volume }: { pressure: number; volume: number }) => [
      of('pressure', pressure),
      of('volume', volume),
    ]
    const { positive, negative } = figures
    const { left, right } = fork.legs
    return {
      leftLeg: say('set-up.leg.left'),
      rightLeg: say('set-up.leg.right'),
      down: say('set-up.down'),
      callouts: {
        bath: {
          figures: [of('volume', left.oil)],
          words:
            left.oil === right.oil
              ? say('set-up.bath.each')
              : say('set-up.bath.left', { right: Object.values(of('volume', right.oil)).join(' ') }),
        },
        negative: { figures: chamber(negative), words: say('set-up.negative', { force: force(negative.force) }) },
        positive: { figures: chamber(positive), words: say('set-up.positive', { force: force(positive.force) }) },
      },
    }
  }
}

/** Under the drawing, so far right that the stroke axis is the stanchion's; alone on a narrow page. */
function chartPlace(fork: ForkParameters | null, width: number) {
  if (!fork || width < 800) return { width: Math.min(width, 520) }
  const axis = strokeAxisOf(fork)
  const [left, height] = [14, 340]
  return {
    width: Math.round(width * (1 - axis.from) + left),
    height,
    plot: { left, width: width * (axis.to - axis.from), top: 14, height: height - 70 },
  }
}

export function SetUpChart({
  inputs,
  pressure,
  load,
  children,
}: {
  inputs: StartInputs
  pressure: number
  load: number
  children: ReactNode
}) {
  const [place, width] = useOwnWidth(876)
  const text = useShownText()
  const wordsOf = useCutawayWords()
  const spring = useMemo(() => airSpringOf(inputs.sheet, inputs.spacers), [inputs.sheet, inputs.spacers])
  const sag = inputs.sag * spring.stroke
  const [stroke, setStroke] = useState(sag)
  const { ambient } = inputs
  const slow = useMemo(() => springCurve(spring, { pressure, ambient }), [spring, pressure, ambient])
  const fast = useMemo(
    () => springCurve(spring, { pressure, ambient, exponent: 1.3, startStroke: sag }),
    [spring, pressure, ambient, sag],
  )
  const at = slow.points.reduce((best, point) =>
    Math.abs(point.stroke - stroke) < Math.abs(best.stroke - stroke) ? point : best,
  )
  const doubt = loadDoubt(inputs)
  const newton = (value: number) => String(Math.round(value))
  const fork = forkOfSheet(inputs.sheet, { spacers: inputs.spacers, stroke, pressure, ambient, ring: stroke })
  const words = fork && wordsOf(fork)
  return (
    <div className="set-up-drawings" ref={place}>
      {fork && (
        <ForkCutaway
          fork={fork}
          {...(words ? { words } : {})}
          label={say('set-up.cutaway', { stroke: text(stroke, 'm'), pressure: text(fork.pressures.positive, 'Pa') })}
        />
      )}
      {children}
      <ForceStroke
        {...chartPlace(fork, width)}
        fullStroke={spring.stroke}
        slow={slow.points}
        fast={fast.points.filter((point) => point.stroke >= sag)}
        load={{
          force: load,
          low: load - doubt,
          high: load + doubt,
          value: newton(load),
          unit: 'N',
          words: say('set-up.row.load'),
        }}
        wanted={{ from: 0.15 * spring.stroke, to: 0.22 * spring.stroke, words: say('set-up.sag-wanted') }}
        stroke={stroke}
        onStroke={setStroke}
        step={0.001}
        strokeMeasure={{ size: 0.001, unit: 'mm', format: (value) => String(Math.round(value)) }}
        forceMeasure={{ size: 1, unit: 'N', format: newton }}
        words={{
          chart: say('set-up.chart'),
          slow: say('set-up.slow'),
          fast: say('set-up.fast'),
          grip: say('set-up.control.stroke'),
          gripValue: `${text(stroke, 'm')}, ${text(at.force, 'N')}`,
        }}
      />
    </div>
  )
}
