/** The form of `doubt`: which calculation, its inputs with the doubt of any of them, which of its answers. */
import {
  calculations,
  describeCalculation,
  groups,
  plain,
  runCalculation,
} from '@legwork/contract/calculations/index.ts'
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { Field } from '../../ui/field.tsx'
import { isRecord, type Path, pathText, valueAt } from './draft.ts'
import { Group } from './fields.tsx'
import { FormProvider, useForm, usePlace } from './form-state.tsx'
import { NumberLine } from './leaves.tsx'
import { AnswerName } from './names.tsx'
import { Section } from './section.tsx'
import { shapeOf } from './shape.ts'
import { Tick, Ticks } from './ticks.tsx'
import './doubt-fields.css'

/** Every number of an answer by its path; long lists are left out. */
function numbersOf(value: unknown, path: Path = []): Path[] {
  if (typeof value === 'number') return [path]
  if (Array.isArray(value)) return value.length > 4 ? [] : value.flatMap((one, at) => numbersOf(one, [...path, at]))
  if (!isRecord(value)) return []
  return Object.entries(value).flatMap(([name, one]) =>
    name === 'units' || name === 'assumptions' ? [] : numbersOf(one, [...path, name]),
  )
}

function Which() {
  const form = useForm()
  const { value, refusal } = usePlace(['calc'])
  function choose(name: string): void {
    const one = calculations[name]
    if (!one) return
    const answer = runCalculation(name, one.example)
    const [first] = answer.ok ? numbersOf(answer.output) : []
    form.change([], { calc: name, input: one.example, outputs: first ? [pathText(first)] : [] })
  }
  const others = Object.values(calculations).filter(({ name }) => name !== 'doubt')
  return (
    <div className="calc-which" data-field="calc">
      <Field label={say('calc.field.calc')} refusal={refusal}>
        {(control) => (
          <select {...control} value={String(value)} onChange={(event) => choose(event.target.value)}>
            {groups.map((group) => (
              <optgroup key={group} label={say(`calc.group.${group}`)}>
                {others
                  .filter((one) => one.group === group)
                  .map((one) => (
                    <option key={one.name} value={one.name} translate="no">
                      {one.title}
                    </option>
                  ))}
              </optgroup>
            ))}
          </select>
        )}
      </Field>
    </div>
  )
}

function Outputs({ calc }: { calc: string }) {
  const { draft } = useForm()
  const { value, change, refusal } = usePlace(['outputs'])
  const wanted: readonly unknown[] = Array.isArray(value) ? value : []
  const input = valueAt(draft, ['input'])
  const offered = useMemo(() => {
    const answer = runCalculation(
      calc,
      plain(input, (doubt) => doubt.value),
    )
    const found = answer.ok ? numbersOf(answer.output) : []
    return found.slice(0, 20)
  }, [calc, input])
  const all = new Map(offered.map((path) => [pathText(path), path]))
  return (
    <Section path={['outputs']} needed>
      {refusal === null && wanted.length === 0 && <p className="book">{say('calc.doubt.none')}</p>}
      <Ticks>
        {[...all].map(([text, path]) => (
          <Tick
            key={text}
            isTicked={wanted.includes(text)}
            onTick={(ticked) => change(ticked ? [...wanted, text] : wanted.filter((one) => one !== text))}
          >
            <AnswerName calc={calc} path={path} />
            {typeof path.at(-1) === 'number' && <span translate="no"> {Number(path.at(-1)) + 1}</span>}
          </Tick>
        ))}
      </Ticks>
    </Section>
  )
}

export function DoubtFields() {
  const form = useForm()
  const calc = valueAt(form.draft, ['calc'])
  const one = typeof calc === 'string' ? calculations[calc] : undefined
  const shape = useMemo(() => (one ? shapeOf(describeCalculation(one).schema) : null), [one])
  return (
    <>
      <Which />
      {one && shape?.is === 'group' && (
        <Section path={['input']} needed label={<span translate="no">{one.title}</span>}>
          <p className="book">{say('calc.doubt.intro')}</p>
          <FormProvider state={{ ...form, calc: one.name, withDoubt: true }}>
            <Group key={one.name} shape={shape} path={['input']} />
          </FormProvider>
        </Section>
      )}
      {one && <Outputs calc={one.name} />}
      <NumberLine path={['draws']} needed={false} instead={10_000} />
      <NumberLine path={['seed']} needed={false} instead={1} />
    </>
  )
}
