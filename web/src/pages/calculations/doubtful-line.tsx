/** A quantity with its doubt: ± a standard uncertainty, anywhere from low to high, or an error that others share by name. */
import type { KindName, MeasureName } from '@legwork/engine'
import { say } from '@legwork/trade'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { isRecord, type Path } from './draft.ts'
import { useForm, usePlace } from './form-state.tsx'
import { type LeafProps, NumberLine, QuantityLine } from './leaves.tsx'
import { FieldName, fieldText } from './names.tsx'

type DoubtfulProps = LeafProps & { kind: KindName; counts?: MeasureName | undefined }

/** The doubt of a temperature is a difference: 2 K, not 2 °C above nothing. */
const ofDoubt = (kind: KindName): KindName => (kind === 'temperature' ? 'temperatureDifference' : kind)

type Way = 'about' | 'between' | 'common' | 'exact'

function wayOf(held: Record<string, unknown> | null): Way {
  if (!held) return 'exact'
  if ('u' in held) return 'about'
  return 'low' in held ? 'between' : 'common'
}

function begun(way: Way, value: unknown): unknown {
  if (way === 'about') return { value, u: '' }
  if (way === 'between') return { value, low: '', high: '' }
  return { value, shared: { '': '' } }
}

/** An error that has a name, and how far it moves this quantity. */
function CommonError({ path, kind, alone }: { path: Path; kind: KindName; alone: boolean }) {
  const { calc } = useForm()
  const { value, change } = usePlace([...path, 'shared'])
  const shared = isRecord(value) ? value : {}
  const u = <FieldName calc={calc} path={[...path, 'u']} />
  const lines = Object.keys(shared).map((name) => (
    <QuantityLine
      key={alone ? 'u' : name}
      path={[...path, 'shared', name]}
      kind={ofDoubt(kind)}
      needed
      instead={undefined}
      label={alone ? u : <span translate="no">{name}</span>}
    />
  ))
  const [name = ''] = Object.keys(shared)
  if (!alone || lines.length > 1) return lines
  return (
    <>
      <TextField
        label={say('calc.doubt.error')}
        hint={say('calc.doubt.error.hint')}
        value={name}
        onChange={(next) => change({ [next]: shared[name] ?? '' })}
      />
      {lines}
    </>
  )
}

/** How what lies between both ends is spread. */
const spreads = ['rectangular', 'triangular', 'arcsine', 'ends'] as const
type Spread = (typeof spreads)[number]

function Between({ path, kind }: { path: Path; kind: KindName }) {
  const { value, change } = usePlace(path)
  const { shape, ends, ...held } = isRecord(value) ? value : {}
  const spread = ends === undefined ? (spreads.find((one) => one === shape) ?? 'rectangular') : 'ends'
  function choose(next: Spread): void {
    if (next === 'ends') change({ ...held, ends: '' })
    else change(next === 'rectangular' ? held : { ...held, shape: next })
  }
  return (
    <>
      <QuantityLine path={[...path, 'low']} kind={kind} needed instead={undefined} label={say('calc.lowest')} />
      <QuantityLine path={[...path, 'high']} kind={kind} needed instead={undefined} label={say('calc.highest')} />
      <Choice
        label={say('calc.doubt.spread')}
        quiet
        options={spreads.map((one) => ({ value: one, label: say(`calc.doubt.spread.${one}`) }))}
        value={spread}
        onChange={choose}
      />
      {spread === 'ends' && (
        <QuantityLine
          path={[...path, 'ends']}
          kind={ofDoubt(kind)}
          needed
          instead={undefined}
          label={say('calc.doubt.ends')}
        />
      )}
    </>
  )
}

export function DoubtfulLine(props: DoubtfulProps) {
  const { path, kind } = props
  const { calc } = useForm()
  const { value, change, refusal } = usePlace(path)
  const held = isRecord(value) ? value : null
  const way = wayOf(held)
  function choose(next: Way): void {
    const plain = held ? held.value : value
    change(next === 'exact' ? plain : begun(next, plain ?? ''))
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
        options={(['about', 'between', 'common', 'exact'] as const).map((one) => ({
          value: one,
          label: say(`calc.doubt.${one}`),
        }))}
        value={way}
        onChange={choose}
      />
      {way === 'about' && (
        <>
          <QuantityLine path={[...path, 'u']} kind={ofDoubt(kind)} needed instead={undefined} />
          <NumberLine
            path={[...path, 'freedom']}
            needed={false}
            instead={undefined}
            label={say('calc.doubt.freedom')}
          />
        </>
      )}
      {way === 'between' && <Between path={path} kind={kind} />}
      {'shared' in held && <CommonError path={path} kind={kind} alone={way === 'common'} />}
      {refusal && (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
    </fieldset>
  )
}
