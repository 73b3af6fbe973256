/** The chassis, part by part, before anything else: sound, or condemned, which stops the job. */
import { type ChassisFound, type ChassisPart, say, traitsOf } from '@legwork/trade'
import { useState } from 'react'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { useStation } from '../../../offline/hooks.tsx'
import { PhotoStrip } from '../../../photos/photo-strip.tsx'
import { PhotoTaking, photosInHand } from '../../../photos/photo-taking.tsx'
import { Button } from '../../../ui/button.tsx'
import { TextField } from '../../../ui/field.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { ByWhom } from '../by-whom.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'

/** What was seen at a part, in words and pictures; it is sound all the same, or condemned. */
function FoundForm({ part, onDone }: { part: ChassisPart; onDone: () => void }) {
  const { keepText, home, stream } = useJobView()
  const { write, refusal } = useWriting()
  const station = useStation()
  const [found, setFound] = useState('')
  const [wordless, setWordless] = useState(false)
  const photos = photosInHand(station, stream, 'chassis-checked')
  const words = found.trim()
  const put = async (verdict: 'sound' | 'condemned') => {
    // Nobody is sent home with an unsafe part and no word of why.
    if (words === '' && (verdict === 'condemned' || photos.length === 0)) return setWordless(true)
    await write('chassis-checked', { part, verdict, found: words ? await keepText(words) : null, photos })
  }
  return (
    <div className="keep-form">
      <TextField
        label={say('look.condemn.found')}
        hint={say(home ? 'look.condemn.note.home' : 'look.condemn.note')}
        value={found}
        onChange={(text) => {
          setFound(text)
          setWordless(false)
        }}
        lines={2}
        refusal={wordless && say('look.condemn.wordless')}
      />
      <PhotoTaking stream={stream} of="chassis-checked" photos={photos} />
      <div className="acts">
        <Button kind="second" onPress={onDone}>
          {say('page.cancel')}
        </Button>
        <Button kind="second" onPress={() => void put('sound')}>
          {say('look.sound-all-the-same')}
        </Button>
        <Button kind="main" onPress={() => void put('condemned')}>
          {say('look.condemn.act', { part: say(`part.${part}`).toLowerCase() })}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </div>
  )
}

function PartNow({ part, no, all }: { part: ChassisPart; no: number; all: number }) {
  const { write, refusal } = useWriting()
  const [writing, setWriting] = useState(false)
  return (
    <div className="part-now">
      <p className="book">{say('look.part-of', { n: no, all })}</p>
      <h3>{say(`part.${part}`)}</h3>
      <p className="book">{say(`look.part.${part}`)}</p>
      {writing ? (
        <FoundForm part={part} onDone={() => setWriting(false)} />
      ) : (
        <div className="acts">
          <Button kind="main" onPress={() => void write('chassis-checked', { part, verdict: 'sound', found: null })}>
            {say('look.sound', { part: say(`part.${part}`) })}
          </Button>
          <Button kind="second" onPress={() => setWriting(true)}>
            {say('look.condemn')}
          </Button>
        </div>
      )}
      <Refused refusal={refusal} />
    </div>
  )
}

function Found({ part, found }: { part: ChassisPart; found: ChassisFound }) {
  const { text } = useJobView()
  return (
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
        {found.photos.length > 0 && <PhotoStrip photos={found.photos} standing />}
      </div>
    </div>
  )
}

function Parts() {
  const { state, unit, sheet } = useJobView()
  const { parts } = traitsOf(sheet?.kind ?? unit?.kind ?? 'fork-air', sheet)
  const at = parts.findIndex((part) => state.facts[`chassis.${part}`] !== 'sound')
  const now = parts[at]
  const open = now !== undefined && !state.stopped && state.facts[`chassis.${now}`] !== 'condemned'
  return (
    <ol className="parts">
      {parts.map((part, index) => {
        const found = state.chassis[part]
        return (
          <li key={part} aria-current={part === now ? 'step' : undefined}>
            {found ? (
              <Found part={part} found={found} />
            ) : part === now && open ? (
              <PartNow part={part} no={index + 1} all={parts.length} />
            ) : (
              <div className="row todo">{say(`part.${part}`)}</div>
            )}
          </li>
        )
      })}
    </ol>
  )
}

/** As long as it is in hand: the chassis before everything else. */
export function Chassis() {
  return (
    <SideHead place="above" title={say('look.chassis')} note={say('look.chassis.note')}>
      <Parts />
    </SideHead>
  )
}

/** Once every part is sound: one line among what was measured, and part by part where somebody asks. */
export function ChassisSound() {
  const { state } = useJobView()
  const found = Object.values(state.chassis)
  const last = found.toSorted((one, other) => other.at.localeCompare(one.at))[0]
  const remarked = found.some((part) => part.found !== null || part.photos.length > 0)
  return (
    <li className="measured chassis-sound">
      <span />
      <VerdictMark verdict="pass" />
      <div className="what">
        <b>{say('look.chassis.row')}</b>
        <small className="book">{last && <ByWhom made={last} />}</small>
      </div>
      <p className="book strip">{say('look.chassis.sound')}</p>
      <div className="value">
        <span className="hand">{say('part.sound')}</span>
        <small className="word">{say('verdict.pass')}</small>
      </div>
      <details open={remarked || undefined}>
        <summary>{say('look.chassis.open')}</summary>
        <Parts />
      </details>
    </li>
  )
}
