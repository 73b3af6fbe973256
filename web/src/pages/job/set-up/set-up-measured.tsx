/** Sag read from both directions: what friction took, what the leg really carries, and the pressure that follows. */
import { Refusal } from '@legwork/engine'
import { say } from '@legwork/trade'
import { useMemo, useState } from 'react'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { Button } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { ByWhom } from '../by-whom.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { ReadingField, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { type MeasuredSag as Corrected, correctedBySag, type SagRead, type StartInputs } from '../start-pressure.ts'
import { measuredFriction, measuredLoad, measuredPressure } from './measured-workings.tsx'
import { Calibrated } from './set-up-calibrated.tsx'

/** Over this apart it is a friction job first (common practice, no source) [m]. */
const tooFarApart = 0.003

interface MeasuredProps {
  inputs: StartInputs
  /** Takes the corrected pressure for the setting. */
  onUse: (pressure: number) => void
}

function Found({ inputs, read, corrected, onUse }: MeasuredProps & { read: SagRead; corrected: Corrected }) {
  const text = useShownText()
  const { sheet } = inputs
  const apart = Math.abs(read.fromAbove - read.fromBelow)
  return (
    <>
      <ValueRow name={say('set-up.mean')}>
        <QuantityText value={corrected.mean} kind="length" digits={1} />
      </ValueRow>
      <ValueRow name={say('set-up.friction')}>
        <WorkedOut
          value={corrected.friction}
          kind="force"
          digits={0}
          workings={() => measuredFriction(sheet, read, corrected, text(apart / 2, 'm', true))}
        />
      </ValueRow>
      {apart > tooFarApart && <p className="book">{say('set-up.spread', { apart: text(apart, 'm') })}</p>}
      <ValueRow name={say('set-up.real-load')}>
        <WorkedOut
          value={corrected.load}
          kind="force"
          digits={0}
          workings={() => measuredLoad(sheet, read, corrected)}
        />
      </ValueRow>
      <ValueRow name={say('set-up.corrected', { percent: Math.round(inputs.sag * 100) })}>
        <WorkedOut
          value={corrected.pressure}
          kind="pressure"
          size="row"
          workings={() => measuredPressure(sheet, read, corrected)}
        />
      </ValueRow>
      <Button kind="second" size="row" onPress={() => onUse(corrected.pressure)}>
        {say('set-up.use-corrected', { pressure: text(corrected.pressure, 'Pa') })}
      </Button>
      <Calibrated inputs={inputs} read={read} mean={corrected.mean} />
    </>
  )
}

export function MeasuredSag({ inputs, onUse }: MeasuredProps) {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const readWith = useReadWith('length', ['tape', 'caliper'])
  const [above, setAbove] = useState<number | null>(state.sag?.fromAbove ?? null)
  const [below, setBelow] = useState<number | null>(state.sag?.fromBelow ?? null)
  const filled = state.setting?.pressure ?? state.setUp?.pressure ?? null
  const found = useMemo(() => {
    if (above === null || below === null || filled === null) return null
    const { sheet, spacers, sag, ambient } = inputs
    const read: SagRead = { fromAbove: above, fromBelow: below, pressure: filled, spacers, sag, ambient }
    try {
      return { read, corrected: correctedBySag(sheet, read) }
    } catch (trouble) {
      if (trouble instanceof Refusal) return trouble
      throw trouble
    }
  }, [above, below, filled, inputs])
  return (
    <SideHead place="above" className="measured-sag" title={say('set-up.measured')} note={say('set-up.measured.note')}>
      <form
        className="keep-line"
        onSubmit={(event) => {
          event.preventDefault()
          if (above !== null && below !== null)
            void write('sag-measured', { fromAbove: above, fromBelow: below, instrument: readWith.picked })
        }}
      >
        <ReadingField label={say('set-up.from-above')} measure="m" value={above} onChange={setAbove} />
        <ReadingField label={say('set-up.from-below')} measure="m" value={below} onChange={setBelow} />
        <ReadWithPick {...readWith} />
        <Button kind="second" type="submit">
          {say('set-up.measured.act')}
        </Button>
      </form>
      {state.sag && <ByWhom made={state.sag} />}
      {filled === null && <p className="book">{say('set-up.measured.unfilled')}</p>}
      {found instanceof Refusal && (
        <p className="refusal" translate="no">
          {found.message}
        </p>
      )}
      {found && !(found instanceof Refusal) && <Found inputs={inputs} onUse={onUse} {...found} />}
      <Refused refusal={refusal} />
    </SideHead>
  )
}
