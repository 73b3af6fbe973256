/** Rows that can be added and taken out: of numbers, of groups, of lists. */
import { say } from '@legwork/trade'
import { Fragment, type ReactNode } from 'react'
import { Button } from '../../ui/button.tsx'
import { type Path, pathText } from './draft.ts'
import { FormProvider, useForm, usePlace } from './form-state.tsx'
import { ChoiceName, FieldName } from './names.tsx'
import { likeLast, mostRows, RowsHidden, TakeOut } from './rows.tsx'
import { type PartProps, Section } from './section.tsx'
import type { Shape } from './shape.ts'
import { columnsOf, TableField } from './table-field.tsx'
import { Tick, Ticks } from './ticks.tsx'
import './lists.css'

type ListShape = Extract<Shape, { is: 'list' }>

/** Draws one member of a list; the form hands it in, because lists stand in groups and groups in lists. */
export type Draw = (part: PartProps & { isInRow: boolean }) => ReactNode

interface Drawn extends Omit<PartProps, 'shape'> {
  draw: Draw
}

/** Any of a few words: a tick for each. */
function WordsField({ options, ...place }: Omit<PartProps, 'shape'> & { options: readonly string[] }) {
  const { path } = place
  const { value, change } = usePlace(path)
  const held: readonly unknown[] = Array.isArray(value) ? value : []
  return (
    <Section {...place}>
      <Ticks>
        {options.map((word) => (
          <Tick
            key={word}
            isTicked={held.includes(word)}
            onTick={(ticked) => change(ticked ? [...held, word] : held.filter((one) => one !== word))}
          >
            <ChoiceName word={word} path={path} />
          </Tick>
        ))}
      </Ticks>
    </Section>
  )
}

export function ListField({ shape, draw, ...place }: Drawn & { shape: ListShape }) {
  const { withDoubt } = useForm()
  if (shape.of.is === 'choice') return <WordsField {...place} options={shape.of.options} />
  const columns = withDoubt ? null : columnsOf(shape.of)
  if (columns) return <TableField {...place} shape={shape} columns={columns} />
  return <RowsField {...place} shape={shape} draw={draw} />
}

function RowsField({ shape, draw, ...place }: Drawn & { shape: ListShape }) {
  const { value, change } = usePlace(place.path)
  const rows: readonly unknown[] = Array.isArray(value) ? value : []
  const isOfGroups = shape.of.is === 'group' || shape.of.is === 'list' || shape.of.is === 'kinds'
  const isInList = typeof place.path.at(-1) === 'number'
  const classes = ['calc-rows', !isOfGroups && 'of-lines', isInList && 'across'].filter(Boolean).join(' ')
  return (
    <Section {...place}>
      <ol className={classes}>
        {rows.slice(0, mostRows).map((_, index) => (
          <li key={rowKey(index)}>
            <RowField shape={shape.of} path={[...place.path, index]} draw={draw} />
            {!isInList && (
              <TakeOut
                name={say('calc.take-out.row', { n: index + 1 })}
                onPress={() => change(rows.filter((_row, at) => at !== index))}
              />
            )}
          </li>
        ))}
      </ol>
      <RowsHidden of={rows.length} />
      {rows.length < shape.most && (
        <Button kind="second" size="row" onPress={() => change([...rows, likeLast(rows, shape.of)])}>
          {say(isInList ? 'calc.add.one' : 'calc.add.row')}
        </Button>
      )}
      {isInList && rows.length > 0 && (
        <Button kind="second" size="row" onPress={() => change(rows.slice(0, -1))}>
          {say('calc.take-out.last')}
        </Button>
      )}
    </Section>
  )
}

/** Rows have no name of their own; taking one out draws those after it anew. */
const rowKey = (index: number): string => `row${index}`

function RowField({ shape, path, draw }: { shape: Shape; path: Path; draw: Draw }) {
  const number = <span translate="no">{Number(path.at(-1)) + 1}</span>
  if (shape.is === 'group')
    return (
      <div className="calc-row-fields" data-field={pathText(path)}>
        <b className="number">{number}</b>
        {draw({ shape, path, needed: true, instead: undefined, isInRow: true })}
      </div>
    )
  const label = shape.is === 'list' ? say('calc.row', { n: Number(path.at(-1)) + 1 }) : number
  return draw({ shape, path, needed: true, instead: undefined, label, isInRow: true })
}

/** A list of a fixed length: [low, high]. */
export function PlacesField({ of, draw, path, needed, instead, label }: Drawn & { of: readonly Shape[] }) {
  const form = useForm()
  const { value, change, refusal } = usePlace(path)
  const held: readonly unknown[] = Array.isArray(value) ? value : []
  /** Emptied everywhere, the whole list is left out. */
  function changePlace(at: Path, next: unknown): void {
    const list = of.map((_, index) => (index === at.at(-1) ? next : held[index]) ?? '')
    change(list.every((one) => one === '') ? undefined : list)
  }
  const taken: readonly unknown[] = Array.isArray(instead) ? instead : []
  const names = [say('calc.lowest'), say('calc.highest')]
  return (
    <fieldset className="calc-places" data-field={pathText(path)}>
      <legend>{label ?? <FieldName calc={form.calc} path={path} />}</legend>
      <FormProvider state={{ ...form, change: changePlace }}>
        {of.map((shape, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the places of such a list are fixed
          <Fragment key={index}>
            {draw({
              shape,
              path: [...path, index],
              needed: needed || value !== undefined,
              instead: taken[index],
              label: of.length === 2 ? names[index] : <span translate="no">{index + 1}</span>,
              isInRow: false,
            })}
          </Fragment>
        ))}
      </FormProvider>
      {refusal && (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
    </fieldset>
  )
}
