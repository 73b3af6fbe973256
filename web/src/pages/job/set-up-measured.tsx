/** Sag read from both directions: what friction took, and the pressure that follows. */
import { Refusal } from '@legwork/engine'
import { say } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { SideHead, ValueRow } from '../../ui/ledger.tsx'
import { ByWhom } from './by-whom.tsx'
import { useJobView, useWriting } from './job-view.tsx'
import { ReadingField, Shown, useShownText } from './readings.tsx'
import { Refused } from './refused.tsx'
import { correctedBySag, type StartInputs } from './start-pressure.ts'

export function MeasuredSag({ inputs }: { inputs: StartInputs }) {
  const { state, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const [above, setAbove] = useState<number | null>(state.sag?.fromAbove ?? null)
  const [below, setBelow] = useState<number | null>(state.sag?.fromBelow ?? null)
  const filled = state.setUp?.pressure ?? null
  const corrected = useMemo(() => {
    if (above === null || below === null || filled === null || !sheet) return null
    try {
      const { spacers, sag, ambient } = inputs
      return correctedBySag(sheet, { fromAbove: above, fromBelow: below, pressure: filled, spacers, sag, ambient })
    } catch (trouble) {
      if (trouble instanceof Refusal) return null
      throw trouble
    }
  }, [above, below, filled, sheet, inputs])
  return (
    <SideHead place="above" title={say('set-up.measured')} note={say('set-up.measured.note')}>
      <form
        className="keep-line"
        onSubmit={(event) => {
          event.preventDefault()
          if (above !== null && below !== null)
            void write('sag-measured', { fromAbove: above, fromBelow: below, instrument: null })
        }}
      >
        <ReadingField label={say('set-up.from-above')} measure="m" value={above} onChange={setAbove} />
        <ReadingField label={say('set-up.from-below')} measure="m" value={below} onChange={setBelow} />
        <Button kind="second" type="submit">
          {say('set-up.measured.act')}
        </Button>
      </form>
      {state.sag && <ByWhom made={state.sag} />}
      {corrected && (
        <>
          <ValueRow name={say('set-up.mean')}>
            <Shown value={corrected.mean} measure="m" />
          </ValueRow>
          <ValueRow name={say('set-up.friction')}>
            <Shown value={corrected.friction} measure="N" />
          </ValueRow>
          <ValueRow name={say('set-up.real-load')}>
            <Shown value={corrected.load} measure="N" />
          </ValueRow>
          <p>
            {say('set-up.corrected', {
              percent: Math.round(inputs.sag * 100),
              pressure: text(corrected.pressure, 'Pa'),
            })}
          </p>
        </>
      )}
      <Refused refusal={refusal} />
    </SideHead>
  )
}
