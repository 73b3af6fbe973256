/** A quantity with its doubt: ± a standard uncertainty, or anywhere from low to high. */
import type { KindName, MeasureName } from '@legwork/engine'
import { say } from '@legwork/trade'
import { Choice } from '../../ui/choice.tsx'
import { isRecord } from './draft.ts'
import { useForm, usePlace } from './form-state.tsx'
import { type LeafProps, QuantityLine } from './leaves.tsx'
import { FieldName, fieldText } from './names.tsx'

type DoubtfulProps = LeafProps & { kind: KindName; counts?: MeasureName | undefined }

/** The doubt of a temperature is a difference: 2 K, not 2 °C above nothing. */
const ofDoubt = (kind: KindName): KindName => (kind === 'temperature' ? 'temperatureDifference' : kind)

export function DoubtfulLine(props: DoubtfulProps) {
  const { path, kind } = props
  const { calc } = useForm()
  const { value, change, refusal } = usePlace(path)
  const held = isRecord(value) ? value : null
  const way = held ? ('u' in held ? 'about' : 'between') : 'exact'
  function choose(next: string): void {
    const plain = held ? held.value : value
    if (next === 'exact') change(plain)
    else change(next === 'about' ? { value: plain ?? '', u: '' } : { value: plain ?? '', low: '', high: '' })
  }
  if (!held)
    return (
      <div className="calc-doubtful">
        <QuantityLine {...props} />
        {value !== undefined && (
          <button
            type="button"
            className="calc-give-doubt"
            aria-label={say('calc.doubt.give.name', { name: fieldText(calc, path) })}
            onClick={() => choose('about')}
          >
            {say('calc.doubt.give')}
          </button>
        )}
      </div>
    )
  const label = <FieldName calc={calc} path={path} />
  return (
    <fieldset className="calc-doubtful is-given">
      <legend className="unseen">{label}</legend>
      <QuantityLine {...props} path={[...path, 'value']} needed label={label} />
      <Choice
        label={say('calc.doubt.how')}
        quiet
        options={(['about', 'between', 'exact'] as const).map((one) => ({
          value: one,
          label: say(`calc.doubt.${one}`),
        }))}
        value={way}
        onChange={choose}
      />
      {way === 'about' ? (
        <QuantityLine path={[...path, 'u']} kind={ofDoubt(kind)} needed instead={undefined} />
      ) : (
        <>
          <QuantityLine path={[...path, 'low']} kind={kind} needed instead={undefined} label={say('calc.lowest')} />
          <QuantityLine path={[...path, 'high']} kind={kind} needed instead={undefined} label={say('calc.highest')} />
        </>
      )}
      {refusal && (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
    </fieldset>
  )
}
