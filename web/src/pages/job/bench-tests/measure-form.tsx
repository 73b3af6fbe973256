/** One more measurement: what, which leg, the reading, with which instrument. */
import { type Leg, type MeasuredEntry, say, type UnitKind } from '@legwork/trade'
import { useEffect, useRef, useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { Field } from '../../../ui/field.tsx'
import { type Measurable, measurable, measurablesOf } from '../findings.ts'
import { useJobView, useWriting } from '../job-view.tsx'
import { lastUsed, rememberUsed } from '../last-used.ts'
import { ReadingField } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import './measure-form.css'

const hints: Readonly<Record<Measurable, () => string>> = {
  'short-of-length': () => say('look.short-how'),
  'return-time': () => say('look.return-how'),
  'return-closed-over-open': () => say('look.return-closed-over-open-how'),
  'return-warm-over-cold': () => say('look.return-warm-over-cold-how'),
  friction: () => say('look.friction-how'),
  breakaway: () => say('look.breakaway-how'),
  'lock-out-creep': () => say('look.lock-out-creep-how'),
  'dead-zone': () => say('look.dead-zone-how'),
  'leak-24-h': () => say('look.leak-24-h-how'),
  clearance: () => say('look.clearance-how'),
  'mount-play': () => say('look.mount-play-how'),
}
const hintOf = (what: Measurable, kind: UnitKind): string =>
  what === 'return-time' && kind.startsWith('shock') ? say('look.return-shock-how') : hints[what]()

export function MeasureForm({ phase, onDone }: { phase: MeasuredEntry['phase']; onDone: () => void }) {
  const { instruments, sheet, unit } = useJobView()
  const kind = sheet?.kind ?? unit?.kind ?? 'fork-air'
  const { write, refusal } = useWriting()
  const [what, setWhat] = useState<Measurable>('short-of-length')
  const [leg, setLeg] = useState<Leg>('left')
  const [value, setValue] = useState<number | null>(null)
  const [picked, setPicked] = useState<{ [W in Measurable]?: string }>({})
  const offered = instruments.filter((one) => !one.putAway && one.kind !== 'pump' && one.kind !== 'wrench')
  const instrument = picked[what] ?? lastUsed(`measure.${what}`, offered) ?? ''
  const pick = (id: string) => {
    setPicked({ ...picked, [what]: id })
    rememberUsed(`measure.${what}`, id || null)
  }
  const { measure, fine, share, legs } = measurable[what]
  const add = async () => {
    if (value === null) return
    const reading = { value, measure, instrument: instrument || null, how: null }
    if (await write('measured', { what, leg: legs ? leg : null, phase, reading })) onDone()
  }
  const form = useRef<HTMLFormElement>(null)
  // It opens where the measurements stand, which may be out of sight.
  useEffect(() => {
    form.current?.scrollIntoView({ block: 'nearest' })
    form.current?.querySelector('input')?.focus({ preventScroll: true })
  }, [])
  return (
    <form
      ref={form}
      className="measure-form"
      onSubmit={(event) => {
        event.preventDefault()
        void add()
      }}
    >
      <Choice
        label={say('look.add.what')}
        options={measurablesOf(kind).map((one) => ({ value: one, label: say(`measure.${one}`) }))}
        value={what}
        onChange={(next) => {
          setWhat(next)
          setValue(null)
        }}
      />
      {legs && (
        <Choice
          label={say('look.add.leg')}
          options={(['left', 'right'] as const).map((one) => ({ value: one, label: say(`leg.${one}.title`) }))}
          value={leg}
          onChange={setLeg}
        />
      )}
      <ReadingField
        key={what}
        label={say('look.add.value')}
        hint={hintOf(what, kind)}
        measure={measure}
        fine={fine}
        share={share}
        value={value}
        onChange={setValue}
      />
      <Field label={say('look.add.with')}>
        {(control) => (
          <select {...control} value={instrument} onChange={(event) => pick(event.target.value)}>
            <option value="">{say('look.add.with.none')}</option>
            {offered.map((one) => (
              <option key={one.id} value={one.id} translate="no">
                {one.name}
              </option>
            ))}
          </select>
        )}
      </Field>
      <div className="acts">
        <Button kind="second" onPress={onDone}>
          {say('page.cancel')}
        </Button>
        <Button kind="main" type="submit">
          {say('look.add.act')}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  )
}
