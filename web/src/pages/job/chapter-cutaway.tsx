/** The unit in section over a chapter, showing what the chapter is about. */
import { forkAt, forkTableOf, isDrawable } from '@legwork/drawing'
import { prepareSpring, standardAir } from '@legwork/engine'
import { type Chapter, isStepId, type JobState, type Sheet, say, springOf } from '@legwork/trade'
import { useMemo, useState } from 'react'
import type { BalloonPart } from '../../cutaway/balloon-places.ts'
import type { Balloon } from '../../cutaway/balloons.tsx'
import { LiveCutaway } from '../../cutaway/live-cutaway.tsx'
import { judgedMeasurements, type Measurable } from './findings.ts'
import { useJobView } from './job-view.tsx'
import { missingForSpring } from './sheet-fields.ts'
import { partsOfStep } from './step-section.tsx'
import { useWide } from './use-wide.ts'

/** Where on the leg a measurement is about. */
const partOf: Readonly<Record<Measurable, BalloonPart>> = {
  'return-time': 'piston',
  clearance: 'lower-bushing',
  friction: 'upper-bushing',
  breakaway: 'wiper',
  'short-of-length': 'stanchion',
  'return-closed-over-open': 'piston',
  'return-warm-over-cold': 'piston',
  'lock-out-creep': 'piston',
  'dead-zone': 'piston',
  'leak-24-h': 'valve',
  'mount-play': 'foot',
}

const letters = 'abcdefghijklmnop'

function balloonsOf(chapter: Chapter, state: JobState, measured: readonly { what: Measurable }[]): readonly Balloon[] {
  if (chapter === 'look-over' || chapter === 'prove')
    return measured.map(({ what }, index) => ({ sign: letters[index] ?? '', part: partOf[what] }))
  if (chapter !== 'work' || state.currentStep === null) return []
  const step = state.steps[state.currentStep]
  const sign = String(state.currentStep + 1)
  return step && isStepId(step.step) ? (partsOfStep[step.step] ?? []).map((part) => ({ sign, part })) : []
}

/** The gauge the drawing stands at [Pa]: as it came in, as it is on the bench, as it leaves. */
function pressureIn(chapter: Chapter, { snapshot, basis, setting }: JobState): number {
  const received = snapshot.pressure?.reading?.value ?? 0
  if (chapter === 'take-in' || chapter === 'look-over' || chapter === 'plan') return received
  if (chapter === 'hand-over') return setting?.pressure ?? basis.filledTo ?? 0
  return basis.filledTo ?? 0
}

function Section({ chapter, sheet }: { chapter: Chapter; sheet: Sheet }) {
  const { state, instruments } = useJobView()
  const [stroke, setStroke] = useState(0)
  const spring = useMemo(
    () => springOf(sheet, state.setting ? { spacers: state.setting.spacers } : {}),
    [sheet, state.setting],
  )
  const pressure = pressureIn(chapter, state)
  const ring = state.snapshot.ring?.reading?.value ?? null
  const table = useMemo(() => forkTableOf(sheet, spring), [sheet, spring])
  const prepared = useMemo(
    () => prepareSpring(spring, pressure, { ambient: standardAir(0).ambient }),
    [spring, pressure],
  )
  const judged = judgedMeasurements(state.measured, sheet, instruments, chapter === 'prove' ? 'done' : 'received')
  if (!table) return null
  return (
    <section className="chapter-cutaway" aria-label={say('cutaway.section')}>
      <LiveCutaway
        fork={forkAt(table, prepared, stroke, ring ?? stroke)}
        fullStroke={prepared.fullStroke}
        onStroke={setStroke}
        view="spring-leg"
        rule={false}
        balloons={balloonsOf(chapter, state, judged)}
      />
    </section>
  )
}

/** On Look over always, on every other chapter where the page is wide enough to keep it in view. Set up has its own. */
export function ChapterCutaway({ chapter }: { chapter: Chapter }) {
  const { sheet } = useJobView()
  const wide = useWide()
  if (chapter === 'set-up' || (chapter !== 'look-over' && !wide)) return null
  if (!sheet || !isDrawable(sheet) || missingForSpring(sheet).length > 0) return null
  return <Section chapter={chapter} sheet={sheet} />
}
