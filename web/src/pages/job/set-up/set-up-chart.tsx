/** The fork in section over its force along the stroke: one axis for both, and both under the finger. */
import { drawnOtherwise, type ForkTable, forkAt, forkTableOf } from '@legwork/drawing'
import { prepareSpring, type Sag, springCurve } from '@legwork/engine'
import { type Sheet, say } from '@legwork/trade'
import { type ReactNode, useMemo, useState } from 'react'
import { besidePaper, ForceStroke } from '../../../charts/force-stroke.tsx'
import type { ForceReading } from '../../../charts/force-stroke-props.ts'
import { ForceStrokeTable } from '../../../charts/force-stroke-table.tsx'
import { useOwnWidth } from '../../../charts/use-own-width.ts'
import { strokeAxisOf } from '../../../cutaway/fork-cutaway.tsx'
import { LiveCutaway } from '../../../cutaway/live-cutaway.tsx'
import { useShownText } from '../readings.tsx'
import { fastExponent, type Standing } from './what-if.ts'
import './set-up.css'

const newton = (value: number) => String(Math.round(value))
const strokeMeasure = { size: 0.001, unit: 'mm', format: newton }
const forceMeasure = { size: 1, unit: 'N', format: newton }

/** What head, acts and bar take of the window [px]. */
const besideChart = 240
/** As high as the window leaves it room under the drawing and over its acts [px]. */
const heightFor = (drawing: number) => Math.round(Math.min(360, Math.max(250, innerHeight - besideChart - drawing)))

/** Under the drawing, so far right that the stroke axis is the stanchion's; on a narrow page on its own. */
function chartPlace(table: ForkTable | null, width: number, alone: boolean) {
  if (!table || width < 800) return { width: width < 560 || alone ? width : Math.round(width * 0.58), height: 348 }
  const axis = strokeAxisOf(table)
  const { left } = besidePaper
  const height = heightFor(axis.height * width)
  return {
    width: Math.round(width * (1 - axis.from) + left),
    height,
    plot: { left, width: width * (axis.to - axis.from), top: 14, height: height - 70 },
    // Up to the ring.
    joinUpTo: -14,
  }
}

/** Slow curve and the fast one from the sag; a fork that bottoms at rest has no fast one. */
function curvesOf({ spring, pressure, ambient }: Standing, from: number) {
  const slow = springCurve(spring, { pressure, ambient })
  const fast = springCurve(spring, { pressure, ambient, exponent: fastExponent, startStroke: from })
  return { slow: slow.points, fast: fast.points.filter((point) => point.stroke >= from) }
}

interface SetUpChartProps {
  sheet: Sheet
  now: Standing
  /** The setting that a what-if is held against. */
  before: Standing | null
  /** As it left the last time; null where it was not here before. */
  lastVisit: Standing | null
  /** Read off this fork today. */
  readings: readonly ForceReading[]
  load: { force: number; doubt: number }
  sag: Sag
  /** Share of the stroke. */
  wanted: { low: number; high: number }
  /** Nothing stands beside it on a page that is held upright. */
  alone: boolean
  /** Beside the drawing's own acts. */
  acts: ReactNode
  /** Under the drawings, with the stroke that the finger is at. */
  bar: (at: { stroke: number; fullStroke: number; onStroke: (stroke: number) => void }) => ReactNode
  children: ReactNode
}

export function SetUpChart(props: SetUpChartProps) {
  const { sheet, now, before, lastVisit, readings, load, sag, wanted, alone, acts, bar, children } = props
  const [place, width] = useOwnWidth(876)
  const [stroke, onStroke] = useState(sag.stroke)
  const text = useShownText()
  const { spring } = now
  const travel = spring.stroke
  const table = useMemo(() => forkTableOf(sheet, spring), [sheet, spring])
  const prepared = useMemo(() => prepareSpring(spring, now.pressure, { ambient: now.ambient }), [spring, now])
  const { slow, fast } = useMemo(() => curvesOf(now, sag.stroke), [now, sag.stroke])
  const beforeSlow = useMemo(() => (before ? curvesOf(before, 0).slow : null), [before])
  const lastSlow = useMemo(() => (lastVisit ? curvesOf(lastVisit, 0).slow : null), [lastVisit])
  const where = useMemo(() => chartPlace(table, width, alone), [table, width, alone])
  const here = Math.min(stroke, prepared.fullStroke)
  const fork = table && forkAt(table, prepared, here)
  const percent = (share: number) => Math.round(share * 100)
  return (
    <>
      <div className="set-up-drawings" ref={place}>
        {fork && (
          <LiveCutaway
            fork={fork}
            fullStroke={prepared.fullStroke}
            onStroke={onStroke}
            rule={false}
            otherwise={drawnOtherwise(sheet)}
            acts={acts}
            tables={() => (
              <ForceStrokeTable slow={slow} fast={fast} before={beforeSlow} lastVisit={lastSlow} readings={readings} />
            )}
          />
        )}
        <ForceStroke
          {...where}
          fullStroke={travel}
          slow={slow}
          fast={fast}
          {...(beforeSlow ? { before: beforeSlow } : {})}
          {...(lastSlow ? { lastVisit: lastSlow } : {})}
          readings={readings}
          load={{
            force: load.force,
            low: load.force - load.doubt,
            high: load.force + load.doubt,
            value: newton(load.force),
            unit: 'N',
            words: say('set-up.chart.load'),
          }}
          sag={sag}
          wanted={{
            from: wanted.low * travel,
            to: wanted.high * travel,
            words: say('set-up.wanted', { low: percent(wanted.low), high: percent(wanted.high) }),
          }}
          stroke={here}
          onStroke={(to) => onStroke(Math.min(to, prepared.fullStroke))}
          step={0.001}
          strokeMeasure={strokeMeasure}
          forceMeasure={forceMeasure}
          words={{
            chart: say('set-up.chart'),
            slow: say('set-up.slow'),
            fast: say('set-up.fast'),
            before: say('set-up.what-if.before'),
            lastVisit: say('set-up.last-visit'),
            grip: say('set-up.control.stroke'),
            gripValue: `${text(here, 'm')}, ${text(prepared.force(here), 'N')}`,
          }}
        />
        {children}
      </div>
      {bar({ stroke: here, fullStroke: prepared.fullStroke, onStroke })}
    </>
  )
}
