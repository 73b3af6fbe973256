/** Every test next to the same one as received: a ledger of before and after. */
import { type MeasuredEntry, type Reading, say, type Verdict } from '@legwork/trade'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { type JudgedMeasurement, measurable } from '../findings.ts'
import { useJobView } from '../job-view.tsx'
import { Shown } from '../readings.tsx'

interface Pair {
  key: string
  name: string
  measure: Reading['measure']
  fine: boolean
  share?: boolean
  before: number | null
  after: number | null
  verdict: Verdict | null
}

const keyOf = ({ what, leg }: MeasuredEntry): string => `${what} ${leg}`

function pairsOf(before: readonly JudgedMeasurement[], after: readonly JudgedMeasurement[]): readonly Pair[] {
  const all = [...after, ...before]
  const keys = [...new Set(all.map(({ entry }) => keyOf(entry)))]
  return keys.flatMap((key) => {
    const of = (list: readonly JudgedMeasurement[]) => list.find(({ entry }) => keyOf(entry) === key)
    const now = of(after)
    const was = of(before)
    const one = now ?? was
    if (!one) return []
    const what = say(`measure.${one.what}`)
    const { leg } = one.entry
    return [
      {
        key,
        name: leg ? say('look.measured.leg', { what, leg: say(`leg.${leg}`) }) : what,
        ...measurable[one.what],
        before: was?.entry.reading.value ?? null,
        after: now?.entry.reading.value ?? null,
        verdict: now?.finding.verdict ?? null,
      },
    ]
  })
}

/** Length and travel stand in the snapshot and in Work, not among the measurements. */
function useOwnPairs(): readonly Pair[] {
  const { state } = useJobView()
  const length = state.measured.findLast((one) => one.what === 'free-length' && one.phase === 'done')
  const travel = state.steps.find((one) => one.step === 'travel-air-out' || one.step === 'travel-spring-out')
  const verdictOf = (fact: string): Verdict | null =>
    fact === 'within' ? 'pass' : fact === 'outside' ? 'fail' : fact === 'cannot-tell' ? 'cannot-tell' : null
  const received = state.measured.findLast((one) => one.what === 'travel' && one.phase === 'received')
  return [
    {
      key: 'length',
      name: say('prove.length'),
      measure: 'm',
      fine: false,
      before: state.snapshot.length?.reading?.value ?? null,
      after: length?.reading.value ?? null,
      verdict: length ? verdictOf(state.facts.length) : null,
    },
    {
      key: 'travel',
      name: say('prove.travel'),
      measure: 'm',
      fine: false,
      before: received?.reading.value ?? null,
      after: travel?.done.once?.reading?.value ?? null,
      verdict: travel?.done.once ? verdictOf(state.facts.travel) : null,
    },
  ]
}

function Cell({ value, pair, hand }: { value: number | null; pair: Pair; hand?: boolean }) {
  return value === null ? (
    <span className="book">{say('prove.not-measured')}</span>
  ) : (
    <Shown
      value={value}
      measure={pair.measure}
      fine={pair.fine}
      share={pair.share ?? false}
      size="row-small"
      hand={hand ?? false}
    />
  )
}

interface BeforeAfterProps {
  before: readonly JudgedMeasurement[]
  after: readonly JudgedMeasurement[]
}

export function BeforeAfter({ before, after }: BeforeAfterProps) {
  const pairs = [...useOwnPairs(), ...pairsOf(before, after)]
  return (
    <table className="before-after">
      <thead>
        <tr>
          <th scope="col">{say('prove.test')}</th>
          <th scope="col">{say('prove.before')}</th>
          <th scope="col">{say('prove.after')}</th>
        </tr>
      </thead>
      <tbody>
        {pairs.map((pair) => (
          <tr key={pair.key}>
            <th scope="row">{pair.name}</th>
            <td>
              <Cell value={pair.before} pair={pair} />
            </td>
            <td>
              <Cell value={pair.after} pair={pair} hand />
              {pair.verdict && (
                <span className="verdict">
                  <VerdictMark verdict={pair.verdict} /> {say(`verdict.${pair.verdict}`)}
                </span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
