/** The bar at the thumb: back, what shuts or opens the way, and on. */
import { isStepId, type StepState, say, sayMessage } from '@legwork/trade'
import { SafetySign } from '../../marks/safety-sign.tsx'
import { Button, LinkButton, ShutButton } from '../../ui/button.tsx'
import { GateNote } from '../../ui/gate-note.tsx'
import { chapterHref } from './job-address.ts'
import { useJobView } from './job-view.tsx'
import type { Place } from './ticking.ts'
import { placeName } from './work-places.tsx'

function nextTitle(step: StepState | undefined): string {
  return step && isStepId(step.step) ? say(`step.${step.step}`) : ''
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
        <GateNote open={!place}>
          {place
            ? shutAct
            : last
              ? say('work.open.last')
              : say('work.open.next', { step: nextTitle(state.steps[index + 1]) })}
        </GateNote>
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
