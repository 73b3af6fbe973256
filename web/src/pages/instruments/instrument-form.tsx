/** What is known of one instrument, typed. */
import {
  checkInstrument,
  type Id,
  type Instrument,
  type InstrumentField,
  type InstrumentFieldName,
  type InstrumentKind,
  instrumentFields,
  instrumentKinds,
  message,
  say,
  sayMessage,
  usualBeside,
} from '@legwork/trade'
import { useState } from 'react'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { measureFor } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'
import { digitsOf } from '../../sheet-form/place-field.tsx'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { TickBox } from '../../ui/tick-box.tsx'

type Numbers = { readonly [N in InstrumentFieldName]?: number | null }

function numbersOf(instrument: Instrument | null, kind: InstrumentKind): Numbers {
  const found = instrumentFields(kind).map(({ name }) => {
    const value: unknown = instrument?.kind === kind ? Reflect.get(instrument, name) : undefined
    return [name, typeof value === 'number' ? value : startOf(name)]
  })
  return Object.fromEntries(found)
}

/** What is so where nobody says otherwise. */
const startOf = (name: InstrumentFieldName): number | null => (name === 'offset' || name === 'adapterLength' ? 0 : null)

function NumberField({
  field,
  value,
  onChange,
}: {
  field: InstrumentField
  value: number | null
  onChange: (value: number | null) => void
}) {
  const person = useMeasures()
  const { name, kind, usual } = field
  const digits = digitsOf(value, measureFor(kind, person))
  const shown = (figure: number): string => String(Number((figure * (usual?.per ?? 1)).toPrecision(3)))
  const odd = (typed: number): string | null =>
    usual && (typed < usual.low || typed > usual.high)
      ? say('instrument.unusual', {
          came: shown(typed),
          measure: usual.measure,
          low: shown(usual.low),
          high: shown(usual.high),
        })
      : null
  return (
    <QuantityInput
      label={say(`instrument.${name}`)}
      {...(name === 'offset' ? { hint: say('instrument.offset.note') } : {})}
      kind={kind}
      digits={digits}
      value={value}
      onChange={onChange}
      {...(usual ? { suggestion: sayMessage(usualBeside(usual)), judge: odd } : {})}
    />
  )
}

interface InstrumentFormProps {
  /** Null for a new one. */
  instrument: Instrument | null
  id: Id
  onKeep: (instrument: Instrument) => void
}

export function InstrumentForm({ instrument, id, onKeep }: InstrumentFormProps) {
  const [kind, setKind] = useState<InstrumentKind>(instrument?.kind ?? 'pump')
  const [name, setName] = useState(instrument?.name ?? '')
  const [note, setNote] = useState(instrument?.note ?? '')
  const [numbers, setNumbers] = useState<Numbers>(() => numbersOf(instrument, kind))
  const [away, setAway] = useState(instrument?.putAway === true)
  const [tried, setTried] = useState(false)
  const hose = instrument && 'hose' in instrument && instrument.kind === kind && instrument.hose
  const made = {
    id,
    kind,
    name: name.trim(),
    note: note.trim() || null,
    ...Object.fromEntries(Object.entries(numbers).filter(([, value]) => value !== null)),
    // A measurement says nothing of a volume that was typed over.
    ...(hose && numbers.hoseVolume === instrument.hoseVolume ? { hose } : {}),
    ...(away ? { putAway: true as const } : {}),
  }
  const problems = checkInstrument(made)
  const labelOf = (field: string): string =>
    field === 'name'
      ? say('instrument.name')
      : sayMessage(
          message(`instrument.${instrumentFields(kind).find((one) => one.name === field)?.name ?? 'resolution'}`),
        )
  return (
    <form
      className="instrument-form"
      onSubmit={(event) => {
        event.preventDefault()
        setTried(true)
        // Its fields are those of its kind: the check has just said so.
        if (problems.length === 0) onKeep(made as unknown as Instrument)
      }}
    >
      {!instrument && (
        <Choice
          label={say('instrument.kind')}
          options={instrumentKinds.map((value) => ({ value, label: say(`instrument.kind.${value}`) }))}
          value={kind}
          onChange={(next) => {
            setKind(next)
            setNumbers(numbersOf(null, next))
          }}
        />
      )}
      <div className="fields">
        <TextField label={say('instrument.name')} value={name} onChange={setName} />
        {instrumentFields(kind).map((field) => (
          <NumberField
            key={`${kind} ${field.name}`}
            field={field}
            value={numbers[field.name] ?? null}
            onChange={(value) => setNumbers((was) => ({ ...was, [field.name]: value }))}
          />
        ))}
        <TextField label={say('instrument.remark')} value={note} onChange={setNote} />
      </div>
      {instrument && (
        <TickBox label={say('instrument.away')} detail={say('instrument.away.note')} ticked={away} onTick={setAway} />
      )}
      <div role="alert">
        {tried &&
          problems.map(({ field, came, allowed, next }) => (
            <p key={field} className="refusal">
              {say('instrument.refused', { field: labelOf(field), came, allowed, next })}
            </p>
          ))}
      </div>
      <Button kind="second" type="submit">
        {say('instrument.keep')}
      </Button>
    </form>
  )
}
