/** One return timed: at how many clicks, by a film's pictures or by a clock. */
import { type MeasuredEntry, say } from '@legwork/trade'
import { useRef, useState } from 'react'
import { QuantityInput } from '../../../figures/quantity-input.tsx'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { useWriting } from '../job-view.tsx'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { ReadingField, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'

interface ReturnFormProps {
  phase: MeasuredEntry['phase']
  marks: { from: number; to: number }
  /** Asked first at these clicks; null where the unit has no adjuster. */
  clicks: number | null
  adjustable: boolean
}

const perSecondKey = 'legwork.return.per-second'
const usualFilm = 240

export function ReturnForm({ phase, marks, clicks: at, adjustable }: ReturnFormProps) {
  const { write, refusal } = useWriting()
  const text = useShownText()
  const readWith = useReadWith('return', ['other'])
  const [by, setBy] = useState<'film' | 'clock'>('film')
  const [clicks, setClicks] = useState<number | null>(at)
  const [pictures, setPictures] = useState<number | null>(null)
  const [perSecond, setPerSecond] = useState<number | null>(
    () => Number(localStorage.getItem(perSecondKey) ?? usualFilm) || usualFilm,
  )
  const [clock, setClock] = useState<number | null>(null)
  const [round, setRound] = useState(0)
  const form = useRef<HTMLFormElement>(null)
  const time = by === 'clock' ? clock : pictures !== null && perSecond ? pictures / perSecond : null
  const keep = async () => {
    if (time === null || time <= 0 || (adjustable && clicks === null)) return
    const film = by === 'film' && pictures !== null && perSecond ? { pictures: Math.round(pictures), perSecond } : null
    const reading = { value: time, measure: 's', instrument: readWith.picked, how: null } as const
    const release = { ...marks, clicks: adjustable ? clicks : null, film }
    if (!(await write('measured', { what: 'return-timed', leg: null, phase, reading, release }))) return
    setPictures(null)
    setClock(null)
    setRound(round + 1)
    form.current?.querySelector('input')?.focus()
  }
  return (
    <form
      ref={form}
      className="return-form"
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <Choice
        label={say('return.by')}
        options={(['film', 'clock'] as const).map((value) => ({ value, label: say(`return.by.${value}`) }))}
        value={by}
        onChange={setBy}
      />
      {adjustable && <ReadingField label={say('return.clicks')} measure="clicks" value={clicks} onChange={setClicks} />}
      {by === 'film' ? (
        <>
          <QuantityInput
            key={`pictures ${round}`}
            label={say('return.pictures')}
            kind="number"
            digits={0}
            value={pictures}
            onChange={setPictures}
          />
          <QuantityInput
            label={say('return.per-second')}
            kind="number"
            digits={0}
            value={perSecond}
            onChange={(value) => {
              setPerSecond(value)
              if (value) localStorage.setItem(perSecondKey, String(value))
            }}
          />
        </>
      ) : (
        <ReadingField
          key={`clock ${round}`}
          label={say('return.time')}
          hint={say('return.time.thumb')}
          measure="s"
          value={clock}
          onChange={setClock}
        />
      )}
      {by === 'film' && time !== null && (
        <p className="book">
          {say('return.is', { pictures: pictures ?? 0, perSecond: perSecond ?? 0, time: text(time, 's') })}
        </p>
      )}
      <ReadWithPick {...readWith} />
      <div className="acts">
        <Button kind="main" type="submit">
          {say('return.keep')}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  )
}
