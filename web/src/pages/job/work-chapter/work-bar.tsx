/** The bar at the thumb: back, what shuts or opens the way, and on. */
import { isStepId, type StepState, say, sayMessage } from '@legwork/trade'
import { SafetySign } from '../../../marks/safety-sign.tsx'
import { Button, LinkButton, ShutButton } from '../../../ui/button.tsx'
import { GateNote } from '../../../ui/gate-note.tsx'
import { chapterHref } from '../job-address.ts'
import { useJobView } from '../job-view.tsx'
import type { Place } from './ticking.ts'
import { placeName } from './work-places.tsx'

function nextTitle(step: StepState | undefined): string {
  return step && isStepId(step.step) ? say(`step.${step.step}`) : ''
}

/** What comes after this step: through the gate once it is ticked, before that as plain words. */
function After({ place, index }: { place: Place | null; index: number }) {
  const { state } = useJobView()
  const last = index === state.steps.length - 1
  const step = nextTitle(state.steps[index + 1])
  if (place) return <p className="then book">{last ? say('work.then.last') : say('work.then', { step })}</p>
  return <GateNote open>{last ? say('work.open.last') : say('work.open.next', { step })}</GateNote>
}

interface WorkBarProps {
  index: number
  /** The first place that is not ticked. */
  place: Place | null
  setIndex: (index: number) => void
}

export function WorkBar({ index, place, setIndex }: WorkBarProps) {
  const { state, stream } = useJobView()
  const last = index === state.steps.length - 1
  const blocked = index === state.currentStep ? (state.next.blocked ?? (place ? null : state.ahead)) : null
  const ahead = index === state.currentStep && place ? state.ahead : null
  const shutAct = place ? say('work.tick.first', { what: placeName(place) }) : ''
  const shut = blocked ?? ahead
  return (
    <div className="work-bar">
      {index === 0 ? (
        <span />
      ) : (
        <Button
          kind="second"
          size="work"
          arrow="back"
          name={say('work.back', { n: index })}
          onPress={() => setIndex(index - 1)}
        >
          <span translate="no">{index}</span>
        </Button>
      )}
      {shut ? (
        <GateNote open={false} sign={shut.gate === 'R16' ? <SafetySign sign="no-pump" size={64} /> : undefined}>
          {sayMessage(shut.because)}
        </GateNote>
      ) : (
        <After place={place} index={index} />
      )}
      {place ? (
        <ShutButton size="work" act={shutAct} why={shut ? sayMessage(shut.because) : shutAct} />
      ) : last ? (
        <LinkButton kind="main" size="work" arrow="forward" href={chapterHref(stream, 'prove')}>
          {say('work.to-prove')}
        </LinkButton>
      ) : (
        <Button kind="main" size="work" arrow="forward" onPress={() => setIndex(index + 1)}>
          {say('work.next')}
        </Button>
      )}
    </div>
  )
}
