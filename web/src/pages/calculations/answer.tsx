/** What came out: the one answer large, the rest in ruled lines, lists as tables. */
import { say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { useMeasures } from '../../figures/world.tsx'
import { SourceMark } from '../../marks/source-mark.tsx'
import { type Verdict, VerdictMark } from '../../marks/verdict-mark.tsx'
import type { AnswerLine } from './answer-lines.ts'
import { AnswerNumber, AnswerRange, readIn } from './answer-number.tsx'
import { type Path, pathText } from './draft.ts'
import { AnswerName, ChoiceName } from './names.tsx'
import './answer.css'

const rowsAtOnce = 12
const entriesAtOnce = 4

const verdicts: readonly string[] = ['pass', 'watch', 'fail', 'cannot-tell'] satisfies Verdict[]

function isVerdict(word: string): word is Verdict {
  return verdicts.includes(word)
}

/** `size`: that of the largest number of a column, whose unit stands above. */
function Value({ line, size }: { line: AnswerLine; size?: number }) {
  const column = size === undefined ? {} : { size, bare: true }
  switch (line.is) {
    case 'number':
      return <AnswerNumber value={line.value} of={line.of} {...column} />
    case 'range':
      return <AnswerRange low={line.low} high={line.high} of={line.of} {...column} />
    case 'numbers':
      if (line.values.length === 0) return say('calc.none')
      return line.values.map((value, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: numbers of a list keep their places
        <span key={index}>
          {index > 0 && ', '}
          <AnswerNumber value={value} of={line.of} {...column} />
        </span>
      ))
    case 'words':
      return line.words.map((word, index) => (
        <span key={word}>
          {index > 0 && ', '}
          <ChoiceName word={word} path={line.path} />
        </span>
      ))
    case 'word':
      if (isVerdict(line.word))
        return (
          <span className="calc-verdict">
            <VerdictMark verdict={line.word} size={24} /> <ChoiceName word={line.word} path={line.path} />
          </span>
        )
      return <ChoiceName word={line.word} path={line.path} />
    case 'yes-no':
      return line.yes ? say('calc.yes') : say('calc.no')
    default:
      return say('calc.none')
  }
}

function Line({ calc, line }: { calc: string; line: AnswerLine }) {
  if (line.is === 'part')
    return (
      <section className="calc-answer-part">
        <h4>
          <AnswerName calc={calc} path={line.path} />
        </h4>
        <Lines calc={calc} lines={line.lines} />
      </section>
    )
  if (line.is === 'table') return <Table calc={calc} line={line} />
  return (
    <div className="calc-answer-line" data-answer={pathText(line.path)}>
      <dt>
        <SourceMark kind="worked-out" /> <AnswerName calc={calc} path={line.path} />
      </dt>
      <dd>
        <Value line={line} />
      </dd>
    </div>
  )
}

/** Ruled lines of name and value; parts and tables stand between them. */
export function Lines({ calc, lines }: { calc: string; lines: readonly AnswerLine[] }) {
  const isPlain = ({ is }: AnswerLine) => is !== 'part' && is !== 'table'
  const [plain, others] = [lines.filter(isPlain), lines.filter((line) => !isPlain(line))]
  return (
    <>
      {plain.length > 0 && (
        <dl className="calc-answer-lines">
          {plain.map((line) => (
            <Line key={pathText(line.path)} calc={calc} line={line} />
          ))}
        </dl>
      )}
      {others.map((line) => (
        <Line key={pathText(line.path)} calc={calc} line={line} />
      ))}
    </>
  )
}

type TableLine = Extract<AnswerLine, { is: 'table' }>
const lastOf = (path: Path) => path.at(-1)

/** Columns of a table in the order they first come; parts of a row are columns of their own. */
function flat(row: readonly AnswerLine[]): AnswerLine[] {
  return row.flatMap((line) => (line.is === 'part' ? flat(line.lines) : [line]))
}

function sizesIn(line: AnswerLine | undefined): number[] {
  if (line?.is === 'number') return [Math.abs(line.value)]
  if (line?.is === 'range') return [Math.abs(line.low), Math.abs(line.high)]
  return line?.is === 'numbers' ? line.values.map(Math.abs) : []
}

export function Table({ calc, line }: { calc: string; line: TableLine }) {
  const person = useMeasures()
  const [all, setAll] = useState(false)
  const rows = line.rows.map(flat)
  const names = [...new Set(rows.flatMap((row) => row.map(({ path }) => lastOf(path))))]
  const columns = names.map((name) => {
    const cells = rows.map((row) => row.find(({ path }) => lastOf(path) === name))
    const size = Math.max(0, ...cells.flatMap(sizesIn))
    const units = new Set(cells.map((cell) => (cell && 'of' in cell ? readIn(cell.of, person, size).unit : null)))
    units.delete(null)
    const [unit] = units
    const path = cells.find((cell) => cell !== undefined)?.path ?? []
    const words = cells.some((cell) => cell?.is === 'words')
      ? 'words'
      : cells.some((cell) => cell?.is === 'word')
        ? 'word'
        : undefined
    return { name, cells, size, unit: units.size === 1 ? (unit ?? undefined) : undefined, path, words }
  })
  if (columns.some(({ words }) => words === 'words')) return <Entries calc={calc} line={line} rows={rows} />
  const shown = all ? rows.length : Math.min(rows.length, rowsAtOnce)
  return (
    <section className="calc-answer-part" data-answer={pathText(line.path)}>
      <h4>
        <AnswerName calc={calc} path={line.path} />
      </h4>
      {rows.length === 0 && <p className="book">{say('calc.none')}</p>}
      {rows.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the page is scrolled by keys
        <div className="calc-table" tabIndex={0}>
          <table>
            <thead>
              <tr>
                {columns.map(({ name, unit, path, words }) => (
                  <th key={name} scope="col" className={words}>
                    <AnswerName calc={calc} path={path} />
                    {unit && <small translate="no">{unit}</small>}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.slice(0, shown).map((_, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: rows of an answer keep their places
                <tr key={index}>
                  {columns.map(({ name, cells, unit, size, words }) => (
                    <td key={name} className={words} data-cell={`${pathText(line.path)}[${index}].${name}`}>
                      <Cell line={cells[index]} size={size} bare={unit !== undefined} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {shown < rows.length && (
        <button type="button" className="calc-more" onClick={() => setAll(true)}>
          <b>{say('calc.rows-more', { n: rows.length })}</b>
        </button>
      )}
    </section>
  )
}

/** Rows that say too much for columns: one under the other, the first word as their title. */
function Entries({ calc, line, rows }: { calc: string; line: TableLine; rows: readonly (readonly AnswerLine[])[] }) {
  const [all, setAll] = useState(false)
  const shown = all ? rows.length : Math.min(rows.length, entriesAtOnce)
  return (
    <section className="calc-answer-part" data-answer={pathText(line.path)}>
      <h4>
        <AnswerName calc={calc} path={line.path} />
      </h4>
      <ol>
        {rows.slice(0, shown).map(([title, ...rest], index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows of an answer keep their places
          <li key={index} className="calc-entry">
            <b>{title && <Value line={title} />}</b>
            <dl>
              {rest.map((one) => (
                <div key={pathText(one.path)} data-answer={pathText(one.path)}>
                  <dt className="book">
                    <AnswerName calc={calc} path={one.path} />
                  </dt>
                  <dd>
                    <Value line={one} />
                  </dd>
                </div>
              ))}
            </dl>
          </li>
        ))}
      </ol>
      {shown < rows.length && (
        <button type="button" className="calc-more" onClick={() => setAll(true)}>
          <b>{say('calc.rows-more', { n: rows.length })}</b>
        </button>
      )}
    </section>
  )
}

/** In a column of one unit every number has the same digits after the point, and the unit stands above. */
function Cell({ line, size, bare }: { line: AnswerLine | undefined; size: number; bare: boolean }) {
  if (!line) return null
  return bare ? <Value line={line} size={size} /> : <Value line={line} />
}

/** What a calculation is asked for, where that is not what comes out first. */
const asksFor: Readonly<Record<string, string>> = {
  'travel-used': 'deepestThere',
  'pump-reading': 'reading',
}
/** Where the whole answer is a comparison, and no number of it stands alone. */
const asksForAll = ['leak-down', 'press-test', 'life', 'both-ends', 'ambient-shift', 'drop', 'oil-height']

interface AnswerProps {
  calc: string
  lines: readonly AnswerLine[]
  /** Stands under the one number, or above all of them. */
  picture: ReactNode
}

/** The answer: the one number that was asked for large, where there is one. */
export function Answer({ calc, lines, picture }: AnswerProps) {
  const hasTable = lines.some(({ is }) => is === 'table')
  const first = lines.find(({ path }) => path[0] === asksFor[calc]) ?? lines[0]
  const rest = lines.filter((line) => line !== first)
  if (hasTable || first?.is !== 'number' || asksForAll.includes(calc))
    return (
      <>
        {picture}
        <Lines calc={calc} lines={lines} />
      </>
    )
  return (
    <>
      <div className="calc-main-line" data-answer={pathText(first.path)}>
        <p className="label">
          <AnswerName calc={calc} path={first.path} />
        </p>
        <p>
          <AnswerNumber value={first.value} of={first.of} main />
        </p>
        <p className="source-line book">
          <SourceMark kind="worked-out" /> {say('calc.worked-out')}
        </p>
      </div>
      {picture}
      <Lines calc={calc} lines={rest} />
    </>
  )
}
