/** The chassis, part by part, before anything else: sound, or condemned, which stops the job. */
import { type ChassisPart, say, sayMessage, traitsOf } from '@legwork/trade'
import { useState } from 'react'
import { VerdictMark } from '../../marks/verdict-mark.tsx'
import { Button } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { ByWhom } from './by-whom.tsx'
import { useJobView, useWriting } from './job-view.tsx'
import { Refused } from './refused.tsx'

function CondemnForm({ part, onDone }: { part: ChassisPart; onDone: () => void }) {
  const { keepText, home } = useJobView()
  const { write, refusal } = useWriting()
  const [found, setFound] = useState('')
  const condemn = async () =>
    write('chassis-checked', { part, verdict: 'condemned', found: await keepText(found.trim()) })
  return (
    <form
      className="keep-form"
      onSubmit={(event) => {
        event.preventDefault()
        if (found.trim()) void condemn()
      }}
    >
      <TextField
        label={say('look.condemn.found')}
        hint={say(home ? 'look.condemn.note.home' : 'look.condemn.note')}
        value={found}
        onChange={setFound}
        lines={2}
      />
      <div className="acts">
        <Button kind="second" size="row" onPress={onDone}>
          {say('page.cancel')}
        </Button>
        <Button kind="main" size="row" type="submit">
          {say('look.condemn.act', { part: say(`part.${part}`).toLowerCase() })}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  )
}

function PartNow({ part, no, all }: { part: ChassisPart; no: number; all: number }) {
  const { write, refusal } = useWriting()
  const [condemning, setCondemning] = useState(false)
  return (
    <div className="part-now">
      <p className="book">{say('look.part-of', { n: no, all })}</p>
      <h3>{say(`part.${part}`)}</h3>
      <p className="book">{say(`look.part.${part}`)}</p>
      {condemning ? (
        <CondemnForm part={part} onDone={() => setCondemning(false)} />
      ) : (
        <div className="acts">
          <Button kind="main" onPress={() => void write('chassis-checked', { part, verdict: 'sound', found: null })}>
            {say('look.sound', { part: say(`part.${part}`) })}
          </Button>
          <Button kind="second" onPress={() => setCondemning(true)}>
            {say('look.condemn')}
          </Button>
        </div>
      )}
      <Refused refusal={refusal} />
    </div>
  )
}

export function Chassis() {
  const { state, unit, sheet, text } = useJobView()
  const { parts } = traitsOf(sheet?.kind ?? unit?.kind ?? 'fork-air', sheet)
  const at = parts.findIndex((part) => state.facts[`chassis.${part}`] !== 'sound')
  const now = parts[at]
  const open = now !== undefined && !state.stopped && state.facts[`chassis.${now}`] !== 'condemned'
  return (
    <SideHead place="above" title={say('look.chassis')} note={say('look.chassis.note')}>
      <ol className="parts">
        {parts.map((part, index) => {
          const found = state.chassis[part]
          return (
            <li key={part} aria-current={part === now ? 'step' : undefined}>
              {found ? (
                <div className="row found">
                  <VerdictMark verdict={found.verdict === 'sound' ? 'pass' : 'fail'} />
                  <div>
                    <b>{say(`part.${part}`)}</b> <span>{say(`part.${found.verdict}`)}</span>
                    <small>
                      <ByWhom made={found} />
                    </small>
                    {found.found && (
                      <p className="book" translate="no">
                        {text(found.found) ?? say('book.text-gone')}
                      </p>
                    )}
                  </div>
                </div>
              ) : part === now && open ? (
                <PartNow part={part} no={index + 1} all={parts.length} />
              ) : (
                <div className="row todo">{say(`part.${part}`)}</div>
              )}
            </li>
          )
        })}
      </ol>
      {at === -1 && <p className="book">{say('look.all-sound')}</p>}
      {state.stopped && <p className="book">{sayMessage(state.stopped.because)}</p>}
    </SideHead>
  )
}
