/** What happened to it before it came: asked beside the signs, known from the book where the book knows. */
import { say } from '@legwork/trade'
import { type HistoryItem, intervalOf, type KnownHistory } from '@legwork/trade/faults/known-beforehand.ts'
import { useState } from 'react'
import { day } from '../../../figures/moment.ts'
import { QuantityInput } from '../../../figures/quantity-input.tsx'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'
import { useHistory } from '../use-history.ts'
import { useLastService } from '../use-last-service.ts'
import './history.css'
import '../look-over.css'
import '../job-words.ts'

type YesOrNo = Exclude<HistoryItem, 'hours-since'>
const asked: readonly YesOrNo[] = ['crashed', 'second-hand', 'serviced-lately']
const answers = { yes: true, no: false, unknown: null } as const
type Answer = keyof typeof answers

function HoursSince({ known }: { known: KnownHistory['hours-since'] }) {
  const { rider, sheet, unit } = useJobView()
  const { write, refusal } = useWriting()
  const last = useLastService()
  const [hours, setHours] = useState<number | null>(known?.from === 'said' ? known.value : null)
  const put = (value: number | null) => void write('history-said', { what: 'hours-since', value })
  const kind = sheet?.kind ?? unit?.kind ?? 'fork-air'
  const intervals = known ? Math.round((known.value / intervalOf(kind)) * 10) / 10 : null
  return (
    <form
      className="hours-since"
      onSubmit={(event) => {
        event.preventDefault()
        if (hours !== null && hours >= 0) put(hours)
      }}
    >
      <div className="line">
        <QuantityInput
          label={say('history.hours-since')}
          hint={say('history.hours-since.note')}
          kind="number"
          value={hours}
          onChange={setHours}
        />
        <Button kind="second" size="row" type="submit" name={say('history.hours-since.act.name')}>
          {say('history.hours-since.act')}
        </Button>
        <Button kind="second" size="row" name={say('history.hours-since.unknown.name')} onPress={() => put(null)}>
          {say('history.hours-since.unknown')}
        </Button>
      </div>
      {known && (
        <p className="book known">
          <SourceMark kind="rider-said" />{' '}
          {known.from === 'book' && last
            ? say('history.hours-since.by-book', {
                hours: Math.round(known.value),
                day: day(last.day),
                week: rider?.hoursPerWeek ?? '–',
              })
            : say('history.hours-since.said', { n: Math.round(known.value) })}{' '}
          {intervals !== null && say('history.intervals', { n: intervals })}
        </p>
      )}
      <Refused refusal={refusal} />
    </form>
  )
}

export function History() {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const known = useHistory()
  const last = useLastService()
  const options = (['yes', 'no', 'unknown'] as const).map((value) => ({ value, label: say(`history.${value}`) }))
  const chosen = (what: YesOrNo): Answer | null => {
    const said = state.history.findLast((one) => one.what === what)
    if (said) return said.value === null ? 'unknown' : said.value ? 'yes' : 'no'
    return known[what]?.value ? 'yes' : null
  }
  return (
    <SideHead place="above" title={say('history.title')} note={say('history.note')} className="signs history">
      {asked.map((what) => (
        <Choice
          key={what}
          label={
            <>
              {say(`history.${what}`)}
              {known[what]?.from === 'book' && last && (
                <small className="book">{say('history.serviced.by-book', { day: day(last.day) })}</small>
              )}
            </>
          }
          options={options}
          value={chosen(what)}
          onChange={(answer) => void write('history-said', { what, value: answers[answer] })}
        />
      ))}
      <Refused refusal={refusal} />
      <HoursSince known={known['hours-since']} />
    </SideHead>
  )
}
