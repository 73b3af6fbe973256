/** The book of one job: every entry, kept or sent, late, carried over, struck. A mistake is struck, never erased. */
import { type AnyEntry, say } from '@legwork/trade'
import { useState } from 'react'
import { clock, day } from '../../figures/moment.ts'
import { Button, LinkButton } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { ChapterFrame } from './chapter-frame.tsx'
import { useEntryText } from './entry-says.ts'
import { chapterHref } from './job-address.ts'
import { useJobView, useNameOf, useWriting } from './job-view.tsx'
import { ReasonForm } from './reason-form.tsx'
import { Refused } from './refused.tsx'

const mayBeStruck = (entry: AnyEntry): boolean => !['job-opened', 'struck', 'ruled'].includes(entry.kind)

function BookLine({ entry }: { entry: AnyEntry }) {
  const { state, entries, text } = useJobView()
  const nameOf = useNameOf()
  const textOf = useEntryText()
  const { write, refusal } = useWriting()
  const [striking, setStriking] = useState(false)
  const struck = state.struck.has(entry.id)
  const strike = entries.find((one) => one.kind === 'struck' && one.body.entry === entry.id)
  const reason = strike?.kind === 'struck' ? text(strike.body.reason) : null
  const contested = state.contested.find((one) => one.entry === entry.id)
  const { standing } = entry
  const says = textOf(entry)
  return (
    <li className="book-line">
      <span className="time" translate="no">
        {day(entry.madeAt)}
        <br />
        {clock(entry.madeAt)}
      </span>
      <div>
        <p className={struck ? 'struck' : undefined} translate="no">
          {says}
        </p>
        <small className="book">
          <span translate="no" className="hand">
            {nameOf(entry.person)}
          </span>{' '}
          <span className={entry.seq === null ? 'kept' : 'sent'}>
            {say(entry.seq === null ? 'book.kept' : 'book.sent')}
          </span>{' '}
          {standing.mode === 'late' && <b>{say('book.late', { time: clock(standing.doneAt) })} </b>}
          {standing.mode === 'carried-over' && <b>{say('job.carried-over')} </b>}
          {contested && <b>{say('job.contested')} </b>}
          {struck && reason && <span>{say('book.struck', { reason })}</span>}
        </small>
        {striking && (
          <ReasonForm
            label={say('book.strike.reason')}
            onCancel={() => setStriking(false)}
            acts={[{ name: say('book.strike.act'), act: (why) => write('struck', { entry: entry.id, reason: why }) }]}
          />
        )}
        <Refused refusal={refusal} />
      </div>
      {!struck && !striking && mayBeStruck(entry) && (
        <Button
          kind="second"
          size="row"
          name={say('book.strike.entry', { entry: says })}
          onPress={() => setStriking(true)}
        >
          {say('book.strike')}
        </Button>
      )}
    </li>
  )
}

function NoteForm() {
  const { keepText } = useJobView()
  const { write, refusal } = useWriting()
  const [note, setNote] = useState('')
  const add = async () => {
    if (note.trim() && (await write('noted', { text: await keepText(note.trim()) }))) setNote('')
  }
  return (
    <form
      className="note-form"
      onSubmit={(event) => {
        event.preventDefault()
        void add()
      }}
    >
      <TextField label={say('book.note.text')} value={note} onChange={setNote} lines={2} />
      <Button kind="second" size="row" type="submit">
        {say('book.note.act')}
      </Button>
      <Refused refusal={refusal} />
    </form>
  )
}

export function JobBook() {
  const { entries, stream, state } = useJobView()
  return (
    <ChapterFrame
      chapter="book"
      actions={
        <LinkButton kind="second" arrow="back" href={chapterHref(stream, state.next.chapter)}>
          {say('page.back-to-chapter')}
        </LinkButton>
      }
    >
      <p className="book">{say('book.note')}</p>
      {entries.length === 0 && <p>{say('book.empty')}</p>}
      <ol className="book-lines">
        {[...entries].reverse().map((entry) => (
          <BookLine key={entry.id} entry={entry} />
        ))}
      </ol>
      <NoteForm />
    </ChapterFrame>
  )
}
