/** How a job stands, and a person's word on it: put aside and taken up again, stopped, called off. */
import './standing-words.ts'
import { type EntryBodies, say, type WaitsFor } from '@legwork/trade'
import { useState } from 'react'
import { day } from '../../../figures/moment.ts'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { TextField } from '../../../ui/field.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { useNeededText } from '../../../ui/use-needed-text.ts'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'

/** What a person puts it aside for; a rest puts itself aside. */
const asideFor = ['answer', 'part', 'specialist', 'rider'] as const satisfies readonly WaitsFor[]
type Aside = (typeof asideFor)[number]
type Word = 'aside' | 'stop' | 'call-off'

function PutAside({ onDone }: { onDone: () => void }) {
  const { keepText } = useJobView()
  const { write, refusal } = useWriting()
  const [waitsFor, setWaitsFor] = useState<Aside | null>(null)
  const [what, setWhat] = useState('')
  const [until, setUntil] = useState('')
  const [tried, setTried] = useState(false)
  const put = async () => {
    setTried(true)
    if (!waitsFor) return
    const why = what.trim() === '' ? null : await keepText(what.trim())
    // A day is meant, not an hour: its noon is that day wherever the book is read.
    const body: EntryBodies['waiting'] = {
      for: waitsFor,
      rest: null,
      until: until === '' ? null : new Date(`${until}T12:00`).toISOString(),
      why,
    }
    if (await write('waiting', body)) onDone()
  }
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault()
        void put()
      }}
    >
      <Choice
        label={say('standing.aside.for')}
        options={asideFor.map((value) => ({ value, label: say(`standing.for.${value}`) }))}
        value={waitsFor}
        onChange={setWaitsFor}
      />
      <div role="alert">{tried && !waitsFor && <p className="refusal">{say('standing.aside.for.missing')}</p>}</div>
      <div className="keep-line">
        <TextField label={say('standing.aside.what')} value={what} onChange={setWhat} />
        <TextField label={say('standing.aside.until')} type="date" value={until} onChange={setUntil} />
        <Button kind="second" type="submit">
          {say('standing.aside')}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  )
}

function WithReason({ word, onDone }: { word: 'stop' | 'call-off'; onDone: () => void }) {
  const { keepText } = useJobView()
  const { write, refusal } = useWriting()
  const reason = useNeededText(say('book.why.missing'))
  const put = async () => {
    const given = reason.take()
    if (given === null) return
    const why = await keepText(given)
    if (await (word === 'stop' ? write('stopped', { gate: null, why }) : write('called-off', { why }))) onDone()
  }
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault()
        void put()
      }}
    >
      <div className="keep-line">
        <TextField label={say('standing.why')} hint={say(`standing.${word}.note`)} {...reason.field} />
        <Button kind="second" type="submit">
          {say(`standing.${word}`)}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  )
}

function Waits() {
  const { state, text } = useJobView()
  const { write, refusal } = useWriting()
  const { waiting } = state
  if (!waiting?.for) return null
  const waits = say(`job.waits.${waiting.for}`)
  const since = day(waiting.at)
  const why = waiting.why === null ? null : text(waiting.why)
  return (
    <div className="waits">
      <p>
        {waiting.until
          ? say('standing.waits.until', { waits, since, day: day(waiting.until) })
          : say('standing.waits.why', { waits, since })}
      </p>
      {why && (
        <p className="book" translate="no">
          “{why}”
        </p>
      )}
      <Button
        kind="second"
        size="row"
        onPress={() => void write('waiting', { for: null, rest: null, until: null, why: null })}
      >
        {say('standing.go-on')}
      </Button>
      <Refused refusal={refusal} />
    </div>
  )
}

/** Left out where the job is closed: its book then only reads. */
export function JobStands() {
  const { state } = useJobView()
  const [word, setWord] = useState<Word | null>(null)
  if (!state.opened || state.handedOver || state.calledOff) return null
  const words: readonly Word[] = state.stopped ? ['call-off'] : ['aside', 'stop', 'call-off']
  const done = () => setWord(null)
  return (
    <SideHead place="above" className="job-stands" title={say('standing.title')} note={say(`job.state.${state.state}`)}>
      <Waits />
      <Choice
        quiet
        label={say('standing.title')}
        options={words.map((value) => ({ value, label: say(`standing.${value}`) }))}
        value={word}
        onChange={setWord}
      />
      {word === 'aside' && <PutAside onDone={done} />}
      {word !== null && word !== 'aside' && <WithReason key={word} word={word} onDone={done} />}
    </SideHead>
  )
}
