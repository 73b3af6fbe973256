/** Where a step acts, on the section of this very unit: for steps whose page has no figure of their own. */
import { forkAt, forkTableOf, isDrawable } from '@legwork/drawing'
import { prepareSpring, standardAir } from '@legwork/engine'
import { isStepId, type Sheet, type StepId, type StepState, say, springOf } from '@legwork/trade'
import { useMemo } from 'react'
import type { BalloonPart } from '../../cutaway/balloon-places.ts'
import { ForkCutaway } from '../../cutaway/fork-cutaway.tsx'
import { useJobView } from './job-view.tsx'
import { missingForSpring } from './sheet-fields.ts'

const atSeals: readonly BalloonPart[] = ['wiper', 'upper-bushing', 'lower-bushing']

/** Parts of the spring leg that a step is about; none where it acts elsewhere. */
export const partsOfStep: Readonly<Partial<Record<StepId, readonly BalloonPart[]>>> = {
  'air-out': ['valve', 'positive'],
  'trapped-check': ['negative', 'positive'],
  'foot-off': ['foot'],
  'lowers-off': ['foot', 'wiper'],
  'seals-out': ['wiper'],
  clean: atSeals,
  inspect: ['stanchion', 'upper-bushing', 'lower-bushing'],
  'seals-in': ['wiper'],
  'lowers-on': atSeals,
  'oil-in': ['bath'],
  'foot-torque': ['foot'],
  'cap-off': ['cap'],
  'spacers-noted': ['spacers'],
  'circlip-out': ['seal-head'],
  'shaft-out': ['air-shaft', 'seal-head', 'piston'],
  'bore-inspect': ['air-shaft', 'stanchion'],
  'air-seals-new': ['seal-head', 'piston', 'cap'],
  'bore-greased': ['seal-head', 'negative', 'piston'],
  'shaft-in': ['air-shaft', 'seal-head', 'piston'],
  'circlip-in': ['seal-head'],
  'cap-torque': ['spacers', 'cap'],
  'travel-air-out': ['stanchion'],
  'fill-quarter': ['valve'],
  'fill-half': ['valve'],
  'fill-target': ['valve'],
}

const letters = 'abc'

function Section({ sheet, parts }: { sheet: Sheet; parts: readonly BalloonPart[] }) {
  const { state } = useJobView()
  const received = state.snapshot.pressure?.reading?.value ?? 0
  const pressure = state.facts.pressure === 'released' ? 0 : (state.basis.filledTo ?? received)
  const drawn = useMemo(() => {
    const spring = springOf(sheet)
    const table = forkTableOf(sheet, spring)
    return table && forkAt(table, prepareSpring(spring, pressure, { ambient: standardAir(0).ambient }), 0)
  }, [sheet, pressure])
  if (!drawn) return null
  const named = parts.map((part) => say(`work.part.${part}`))
  return (
    <figure className="step-section">
      <ForkCutaway
        fork={drawn}
        view="spring-leg"
        label={say('work.part.at', { parts: named.join(', ') })}
        balloons={parts.map((part, index) => ({ sign: letters[index] ?? '', part }))}
      />
      <figcaption aria-hidden="true">
        {named.map((name, index) => (
          <span key={name}>
            <b translate="no">{letters[index]}</b> {name}
          </span>
        ))}
      </figcaption>
    </figure>
  )
}

/** Nothing where the sheet lacks a dimension that the drawing stands on, or the step acts elsewhere. */
export function StepSection({ step }: { step: StepState }) {
  const { sheet } = useJobView()
  const parts = isStepId(step.step) ? partsOfStep[step.step] : undefined
  if (!parts || !sheet || !isDrawable(sheet) || missingForSpring(sheet).length > 0) return null
  return <Section sheet={sheet} parts={parts} />
}
