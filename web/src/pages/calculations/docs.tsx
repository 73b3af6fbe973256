/** What an answer rests on: formula, range, sources, assumptions. Data of the calculation itself. */
import type { Calculation } from '@legwork/contract/calculations/index.ts'
import { say } from '@legwork/trade'
import { SourceMark } from '../../marks/source-mark.tsx'
import { Formula } from './formula.tsx'

export function Docs({ one, assumptions }: { one: Calculation; assumptions: readonly string[] }) {
  return (
    <section className="calc-docs">
      <h3>{say('calc.formula')}</h3>
      <p className="formula book" translate="no">
        <Formula text={one.formula} />
      </p>
      <h3>{say('calc.holds')}</h3>
      <p className="book" translate="no">
        {one.range}
      </p>
      {assumptions.length > 0 && (
        <>
          <h3>{say('calc.rests-on')}</h3>
          <ul className="book" translate="no">
            {assumptions.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
      <h3>{say('calc.sources')}</h3>
      <ul className="book" translate="no">
        {one.sources.map((source) => (
          <li key={source}>
            <SourceMark kind="handbook" /> {source}
          </li>
        ))}
      </ul>
    </section>
  )
}
