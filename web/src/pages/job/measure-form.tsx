/** One more measurement: what, which leg, the reading, with which instrument. */
import { type Leg, type MeasuredEntry, say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { Field } from '../../ui/field.tsx'
import { type Measurable, measurable, measurables } from './findings.ts'
import { useJobView, useWriting } from './job-view.tsx'
import { lastUsed, rememberUsed } from './last-used.ts'
import { ReadingField } from './readings.tsx'
import { Refused } from './refused.tsx'

const hintOf = (what: Measurable): string =>
  ({
    'return-time': say('look.return-how'),
    clearance: say('look.clearance-how'),
    friction: say('look.friction-how'),
    breakaway: say('look.breakaway-how'),
    'short-of-length': say('look.short-how'),
  })[what]

export function MeasureForm({ phase, onDone }: { phase: MeasuredEntry['phase']; onDone: () => void }) {
  const { instruments } = useJobView()
  const { write, refusal } = useWriting()
  const [what, setWhat] = useState<Measurable>('return-time')
  const [leg, setLeg] = useState<Leg>('left')
  const [value, setValue] = useState<number | null>(null)
  const [picked, setPicked] = useState<{ [W in Measurable]?: string }>({})
  const offered = instruments.filter((one) => !one.putAway && one.kind !== 'pump' && one.kind !== 'wrench')
  const instrument = picked[what] ?? lastUsed(`measure.${what}`, offered) ?? ''
  const pick = (id: string) => {
    setPicked({ ...picked, [what]: id })
    rememberUsed(`measure.${what}`, id || null)
  }
  const { measure, fine, legs } = measurable[what]
  const add = async () => {
    if (value === null) return
    const reading = { value, measure, instrument: instrument || null, how: null }
    if (await write('measured', { what, leg: legs ? leg : null, phase, reading })) onDone()
  }
  return (
    <form
      className="measure-form"
      onSubmit={(event) => {
        event.preventDefault()
        void add()
      }}
    >
      <Choice
        label={say('look.add.what')}
        options={measurables.map((one) => ({ value: one, label: say(`measure.${one}`) }))}
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
        hint={hintOf(what)}
        measure={measure}
        fine={fine}
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
