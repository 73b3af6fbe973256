/** Fields that hold one thing: a quantity, a number, a text, a word out of a list. */
import { type KindName, type MeasureName, measures } from '@legwork/engine'
import { say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { measureFor } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'
import { Choice } from '../../ui/choice.tsx'
import { Field, TextField } from '../../ui/field.tsx'
import { type Path, pathText } from './draft.ts'
import { useForm, usePlace } from './form-state.tsx'
import { ChoiceName, FieldName } from './names.tsx'
import { useTyped } from './use-typed.ts'
import { shownInField, typedNumber, typedQuantity } from './written-quantity.ts'

export interface LeafProps {
  path: Path
  needed: boolean
  /** Taken where it is left out. */
  instead: unknown
  /** Instead of the field's own name. */
  label?: ReactNode
}

interface LineProps extends LeafProps {
  shown: string
  unit: string | null
  beside: ReactNode
  onType: (typed: string) => unknown
  inputMode: 'decimal' | 'text'
}

/** One line to write on, its measure beside it. What is typed stays as it was typed until the field is left. */
function Line({ path, needed, label, shown, unit, beside, onType, inputMode }: LineProps) {
  const { calc } = useForm()
  const { change, refusal } = usePlace(path)
  const typed = useTyped({ shown, unit, onType }, change)
  return (
    <div className={inputMode === 'text' ? 'calc-line is-text' : 'calc-line'} data-field={pathText(path)}>
      <Field label={label ?? <FieldName calc={calc} path={path} />} suggestion={beside} refusal={refusal}>
        {(control) => (
          <span className="with-unit">
            <input
              {...control}
              type="text"
              inputMode={inputMode}
              autoComplete="off"
              autoCapitalize="off"
              spellCheck={false}
              required={needed}
              translate="no"
              value={typed.text}
              onChange={(event) => typed.type(event.target.value)}
              onBlur={typed.leave}
            />
            <span className="unit" translate="no">
              {typed.unit}
            </span>
          </span>
        )}
      </Field>
    </div>
  )
}

function LeftOut({ needed, value }: { needed: boolean; value: string | null }) {
  if (needed) return null
  return value === null ? say('calc.may') : say('calc.left-out', { value })
}

/** A quantity in any measure; a bare number takes the one beside it. `counts`: what a plain number of the contract means. */
export function QuantityLine({
  kind,
  counts,
  ...props
}: LeafProps & { kind: KindName; counts?: MeasureName | undefined }) {
  const person = useMeasures()
  const { value } = usePlace(props.path)
  const written = (given: unknown) =>
    typeof given === 'number' && counts ? `${given} ${measures[counts].label}` : given
  const { text, measure } = shownInField(written(value), kind, person)
  const otherwise = props.instead === undefined ? null : shownInField(written(props.instead), kind, person)
  const unit = measure && measures[measure].label
  const taken =
    otherwise && [otherwise.text, otherwise.measure && measures[otherwise.measure].label].filter(Boolean).join(' ')
  return (
    <Line
      {...props}
      shown={text}
      unit={unit}
      inputMode="decimal"
      onType={(typed) => typedQuantity(typed, kind, measure ?? measureFor(kind, person))}
      beside={value === undefined || value === '' ? <LeftOut needed={props.needed} value={taken} /> : null}
    />
  )
}

/** A bare number, or one in a unit that nobody writes in another. */
export function NumberLine({ unit = null, ...props }: LeafProps & { unit?: string | null | undefined }) {
  const { value } = usePlace(props.path)
  const taken = typeof props.instead === 'number' ? String(props.instead) : null
  return (
    <Line
      {...props}
      shown={value === undefined ? '' : String(value)}
      unit={unit}
      inputMode="decimal"
      onType={typedNumber}
      beside={value === undefined || value === '' ? <LeftOut needed={props.needed} value={taken} /> : null}
    />
  )
}

export function TextLine(props: LeafProps) {
  const { value } = usePlace(props.path)
  return (
    <Line
      {...props}
      shown={value === undefined ? '' : String(value)}
      unit={null}
      inputMode="text"
      onType={(typed) => (typed === '' ? undefined : typed)}
      beside={value === undefined ? <LeftOut needed={props.needed} value={null} /> : null}
    />
  )
}

/** One word of a few; the one that is taken when nothing is chosen stands chosen. */
export function WordChoice({ path, instead, options }: LeafProps & { options: readonly string[] }) {
  const { calc } = useForm()
  const { value, change, refusal } = usePlace(path)
  const chosen = value ?? instead
  return (
    <div className="calc-choice" data-field={pathText(path)}>
      <Choice
        label={<FieldName calc={calc} path={path} />}
        options={options.map((word) => ({ value: word, label: <ChoiceName word={word} path={path} /> }))}
        value={typeof chosen === 'string' ? chosen : null}
        onChange={change}
      />
      {refusal && (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
    </div>
  )
}

export function YesNo({ path, instead }: LeafProps) {
  const { calc } = useForm()
  const { value, change } = usePlace(path)
  const chosen = value ?? instead
  return (
    <div className="calc-choice calc-yes-no" data-field={pathText(path)}>
      <Choice
        label={<FieldName calc={calc} path={path} />}
        options={['true', 'false'].map((word) => ({ value: word, label: <ChoiceName word={word} path={path} /> }))}
        value={typeof chosen === 'boolean' ? String(chosen) : null}
        onChange={(word) => change(word === 'true')}
      />
    </div>
  )
}

/** What has no form of its own: names and numbers as the API takes them. */
export function JsonLines({ path, label }: LeafProps) {
  const { calc } = useForm()
  const { value, change, refusal } = usePlace(path)
  const [typed, setTyped] = useState<string | null>(null)
  return (
    <div className="calc-choice" data-field={pathText(path)}>
      <TextField
        label={label ?? <FieldName calc={calc} path={path} />}
        hint={say('calc.json')}
        refusal={refusal}
        value={typed ?? JSON.stringify(value ?? {})}
        lines={3}
        onChange={(text) => {
          setTyped(text)
          change(readJson(text))
        }}
      />
    </div>
  )
}

/** What is no JSON stays a text, and is refused by name. */
function readJson(text: string): unknown {
  if (text.trim() === '') return undefined
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}
