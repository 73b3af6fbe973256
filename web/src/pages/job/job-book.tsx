/** The book of a job: every line in order, kept or sent, late, carried over, struck. */
import { type AnyEntry, isStepId, say } from '@legwork/trade'
import { useState } from 'react'
import { clock, day } from '../../figures/moment.ts'
import { Button } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { useJobView, useNameOf, useWriting } from './job-view.tsx'
import { useShownText } from './readings.tsx'
import { Refused } from './refused.tsx'

/** What a line says, short. */
function useSays(): (entry: AnyEntry) => string {
  const { text } = useJobView()
  const shown = useShownText()
  const words = (digest: string | null): string => (digest ? (text(digest) ?? say('book.text-gone')) : '–')
  return (entry) => {
    switch (entry.kind) {
      case 'snapshot-kept': {
        const item = say(`snapshot.${entry.body.item}`)
        const { reading, notKnownBecause } = entry.body
        return reading
          ? say('entry.snapshot-kept', { item, reading: shown(reading.value, reading.measure) })
          : say('entry.snapshot-not-known', { item, reason: words(notKnownBecause) })
      }
      case 'step-done': {
        const { step, leg, reading } = entry.body
        const title = isStepId(step) ? say(`step.${step}`) : step
        const side = leg ? `, ${say(`leg.${leg}`)}` : ''
        return `${title}${side}${reading ? `: ${shown(reading.value, reading.measure)}` : ''}`
      }
      case 'set-up-worked-out':
        return say('entry.set-up-worked-out', { pressure: shown(entry.body.pressure, 'Pa') })
      case 'setting-written':
        return say('entry.setting-written', { pressure: shown(entry.body.pressure, 'Pa') })
      case 'noted':
        return words(entry.body.text)
      case 'put-back':
        return say(`put-back.${entry.body.item}`)
      case 'measured':
        return say('entry.measured', {
          what: entry.body.what,
          reading: shown(entry.body.reading.value, entry.body.reading.measure),
        })
      case 'chassis-checked':
        return say('entry.chassis-checked', {
          part: say(`part.${entry.body.part}`),
          verdict: say(`part.${entry.body.verdict}`),
        })
      case 'struck':
        return say('entry.struck', { reason: words(entry.body.reason) })
      case 'handed-over':
        return say('entry.handed-over', { name: words(entry.body.receivedBy) })
      case 'job-opened':
        return say('entry.job-opened')
      case 'taken-over':
        return say('entry.taken-over')
      case 'ready':
        return say('entry.ready')
      case 'sag-measured':
        return say('entry.sag-measured', {
          above: shown(entry.body.fromAbove, 'm'),
          below: shown(entry.body.fromBelow, 'm'),
        })
      case 'stopped':
        return say('entry.stopped', { why: words(entry.body.why) })
      default:
        return entry.kind
    }
  }
}

function Strike({ entry, says }: { entry: AnyEntry; says: string }) {
  const { keepText } = useJobView()
  const { write, refusal } = useWriting()
  const [open, setOpen] = useState(false)
  const [reason, setReason] = useState('')
  if (!open)
    return (
      <Button kind="second" size="row" name={say('book.strike.entry', { entry: says })} onPress={() => setOpen(true)}>
        {say('book.strike')}
      </Button>
    )
  return (
    <form
      onSubmit={async (event) => {
        event.preventDefault()
        if (reason.trim()) await write('struck', { entry: entry.id, reason: await keepText(reason.trim()) })
      }}
    >
      <TextField label={say('book.strike.reason')} value={reason} onChange={setReason} />
      <Button kind="second" size="row" type="submit">
        {say('book.strike.act')}
      </Button>
      <Refused refusal={refusal} />
    </form>
  )
}

function Note() {
  const { keepText } = useJobView()
  const { write } = useWriting()
  const [note, setNote] = useState('')
  return (
    <form
      className="keep-line"
      onSubmit={async (event) => {
        event.preventDefault()
        if (note.trim() && (await write('noted', { text: await keepText(note.trim()) }))) setNote('')
      }}
    >
      <TextField label={say('book.note.text')} value={note} onChange={setNote} />
      <Button kind="second" type="submit">
        {say('book.note.act')}
      </Button>
    </form>
  )
}

export function JobBook() {
  const { entries, state } = useJobView()
  const nameOf = useNameOf()
  const says = useSays()
  return (
    <SideHead place="above" title={say('book.title')} note={say('book.note')}>
      <Note />
      <ol aria-label={say('book.title')}>
        {entries.toReversed().map((entry) => {
          const struck = state.struck.has(entry.id)
          const { standing } = entry
          return (
            <li key={entry.id}>
              <Row className="book-row">
                <span className={struck ? 'struck' : ''} translate="no">
                  {says(entry)}
                </span>
                <span className="hand" translate="no">
                  {say('page.by', { name: nameOf(entry.person), time: clock(entry.madeAt) })}
                </span>
                <span className="book">
                  {standing.mode === 'late' && say('book.late', { time: clock(standing.doneAt) })}
                  {standing.mode === 'carried-over' && `${say('job.carried-over')}, ${day(standing.doneAt)}`}{' '}
                  <span className={entry.seq === null ? 'kept' : 'sent'}>
                    {say(entry.seq === null ? 'book.kept' : 'book.sent')}
                  </span>
                </span>
                {!struck && entry.kind !== 'struck' && entry.kind !== 'job-opened' && (
                  <Strike entry={entry} says={says(entry)} />
                )}
              </Row>
            </li>
          )
        })}
      </ol>
    </SideHead>
  )
}
