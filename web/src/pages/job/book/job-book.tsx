/** The book of a job: every line in order, kept or sent, late, carried over, struck. */
import { type AnyEntry, photosIn, say } from '@legwork/trade'
import { useState } from 'react'
import { clock, day } from '../../../figures/moment.ts'
import { useStation } from '../../../offline/hooks.tsx'
import { PhotoStrip } from '../../../photos/photo-strip.tsx'
import { PhotoTaking, photosInHand } from '../../../photos/photo-taking.tsx'
import { Button } from '../../../ui/button.tsx'
import { TextField } from '../../../ui/field.tsx'
import { Row, SideHead } from '../../../ui/ledger.tsx'
import { useNeededText } from '../../../ui/use-needed-text.ts'
import { useJobView, useNameOf, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'
import { useEntrySays } from './entry-says.ts'
import { JobStands } from './standing.tsx'

function Strike({ entry, says }: { entry: AnyEntry; says: string }) {
  const { keepText } = useJobView()
  const { write, refusal } = useWriting()
  const [open, setOpen] = useState(false)
  const reason = useNeededText(say('book.why.missing'))
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
        const given = reason.take()
        if (given !== null) await write('struck', { entry: entry.id, reason: await keepText(given) })
      }}
    >
      <TextField label={say('book.strike.reason')} {...reason.field} />
      <Button kind="second" size="row" type="submit">
        {say('book.strike.act')}
      </Button>
      <Refused refusal={refusal} />
    </form>
  )
}

function Note() {
  const { keepText, stream } = useJobView()
  const { write, refusal } = useWriting()
  const station = useStation()
  const note = useNeededText(say('book.note.missing'))
  const photos = photosInHand(station, stream, 'noted')
  const [open, setOpen] = useState(photos.length > 0)
  const put = async () => {
    const words = note.take()
    if (words !== null && (await write('noted', { text: await keepText(words), photos }))) {
      note.clear()
      setOpen(false)
    }
  }
  return (
    <form
      className="note-form"
      onSubmit={(event) => {
        event.preventDefault()
        void put()
      }}
    >
      <div className="keep-line">
        <TextField label={say('book.note.text')} {...note.field} />
        <Button kind="second" onPress={() => setOpen(!open)}>
          {say('book.note.photo')}
        </Button>
        <Button kind="second" type="submit">
          {say('book.note.act')}
        </Button>
      </div>
      {open && <PhotoTaking stream={stream} of="noted" photos={photos} />}
      <Refused refusal={refusal} />
    </form>
  )
}

export function JobBook() {
  const { entries, state } = useJobView()
  const nameOf = useNameOf()
  const says = useEntrySays()
  return (
    <>
      <JobStands />
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
                {photosIn(entry).length > 0 && <PhotoStrip photos={photosIn(entry)} standing />}
              </li>
            )
          })}
        </ol>
      </SideHead>
    </>
  )
}
