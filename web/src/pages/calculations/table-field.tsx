/** Rows of a few plain fields, as a table: names and measures once above, a line for each row. */
import { measures } from '@legwork/engine'
import { say } from '@legwork/trade'
import type { CSSProperties } from 'react'
import { measureFor } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'
import { Button } from '../../ui/button.tsx'
import { type Path, pathText } from './draft.ts'
import { useForm, usePlace } from './form-state.tsx'
import { FieldName, fieldText } from './names.tsx'
import { likeLast, mostRows, RowsHidden, TakeOut } from './rows.tsx'
import { type PartProps, Section } from './section.tsx'
import type { FormField, Shape } from './shape.ts'
import { useTyped } from './use-typed.ts'
import { shownInField, typedNumber, typedQuantity } from './written-quantity.ts'
import './table-field.css'

const mostColumns = 4

/** The columns of rows that fit on one line each; null for any other list. */
export function columnsOf(of: Shape): readonly FormField[] | null {
  if (of.is !== 'group' || of.ways.length > 0 || of.fields.length > mostColumns) return null
  const isPlain = ({ shape: { is } }: FormField) => is === 'quantity' || is === 'number' || is === 'yes-no'
  return of.fields.every(isPlain) ? of.fields : null
}

interface TableFieldProps extends Omit<PartProps, 'shape'> {
  shape: Extract<Shape, { is: 'list' }>
  columns: readonly FormField[]
}

export function TableField({ shape, columns, ...place }: TableFieldProps) {
  const { calc } = useForm()
  const { path } = place
  const { value, change } = usePlace(path)
  const rows: readonly unknown[] = Array.isArray(value) ? value : []
  // React's type of a style knows no properties of our own.
  const grid = { '--columns': columns.length } as CSSProperties
  return (
    <Section {...place}>
      <div className="calc-grid" style={grid}>
        <div className="calc-grid-row head" aria-hidden="true">
          <span />
          {columns.map(({ name, shape: of }) => (
            <span key={name}>
              <FieldName calc={calc} path={[...path, name]} />
              <Measure of={of} />
            </span>
          ))}
        </div>
        <ol>
          {rows.slice(0, mostRows).map((_, index) => (
            <li key={rowKey(index)} className="calc-grid-row">
              <b translate="no">{index + 1}</b>
              {columns.map((column) => (
                <Cell key={column.name} path={[...path, index, column.name]} column={column} row={index + 1} />
              ))}
              <TakeOut
                name={say('calc.take-out.row', { n: index + 1 })}
                onPress={() => change(rows.filter((_row, at) => at !== index))}
              />
            </li>
          ))}
        </ol>
      </div>
      <RowsHidden of={rows.length} />
      {rows.length < shape.most && (
        <Button kind="second" size="row" onPress={() => change([...rows, likeLast(rows, shape.of)])}>
          {say('calc.add.row')}
        </Button>
      )}
    </Section>
  )
}

/** Rows have no name of their own; taking one out draws those after it anew. */
const rowKey = (index: number): string => `row${index}`

/** The measure of a column: what a bare number in it takes. */
function Measure({ of }: { of: Shape }) {
  const person = useMeasures()
  if (of.is !== 'quantity') return null
  const measure = of.counts ?? measureFor(of.kind, person)
  return measure && <small translate="no">{measures[measure].label}</small>
}

function Cell({ path, column, row }: { path: Path; column: FormField; row: number }) {
  const { calc } = useForm()
  const { value, change, refusal } = usePlace(path)
  const name = say('calc.cell', { name: fieldText(calc, path), n: row })
  const id = `cell-${pathText(path)}`
  return (
    <div className="calc-cell" data-field={pathText(path)}>
      {column.shape.is === 'yes-no' ? (
        <label className="tick">
          <input
            type="checkbox"
            aria-label={name}
            checked={value === true}
            onChange={({ target }) => change(target.checked)}
          />
        </label>
      ) : (
        <Written path={path} column={column} name={name} saidIn={refusal ? id : undefined} />
      )}
      <p id={id} className="refusal" role="alert">
        {refusal}
      </p>
    </div>
  )
}

interface WrittenProps {
  path: Path
  column: FormField
  name: string
  /** Where the refusal stands. */
  saidIn: string | undefined
}

function Written({ path, column: { shape, needed }, name, saidIn }: WrittenProps) {
  const person = useMeasures()
  const { value, change } = usePlace(path)
  const own = shape.is === 'quantity' ? (shape.counts ?? measureFor(shape.kind, person)) : null
  function shown(): string {
    if (shape.is !== 'quantity') return value === undefined ? '' : String(value)
    if (typeof value === 'number' && shape.counts) return String(value)
    const { text, measure } = shownInField(value, shape.kind, person)
    // A measure other than the column's stands with its number.
    return measure && measure !== own ? `${text} ${measures[measure].label}` : text
  }
  const onType = (text: string) => (shape.is === 'quantity' ? typedQuantity(text, shape.kind, own) : typedNumber(text))
  const typed = useTyped({ shown: shown(), unit: null, onType }, change)
  return (
    <input
      type="text"
      inputMode="decimal"
      autoComplete="off"
      spellCheck={false}
      translate="no"
      aria-label={name}
      aria-invalid={saidIn ? true : undefined}
      aria-describedby={saidIn}
      required={needed}
      value={typed.text}
      onChange={(event) => typed.type(event.target.value)}
      onBlur={typed.leave}
    />
  )
}
