/** Take in: the snapshot in its order, beside what the rider said and left. */
import { type Instrument, type Reading, type SnapshotItem, say, traitsOf } from '@legwork/trade'
import { useEffect, useRef, useState } from 'react'
import { useStation } from '../../../offline/hooks.tsx'
import { PhotoStrip } from '../../../photos/photo-strip.tsx'
import { PhotoTaking, photosInHand } from '../../../photos/photo-taking.tsx'
import { BottomLine } from '../../../ui/bottom-line.tsx'
import { Button, LinkButton } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { TextField } from '../../../ui/field.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { ByWhom } from '../by-whom.tsx'
import { chapterHref } from '../job-address.ts'
import { gaugesOf, useJobView, useWriting } from '../job-view.tsx'
import { useLastUsed } from '../last-used.ts'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { ReadingField, Shown, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { beforePump } from '../start-pressure.ts'
import { VisitNotes } from './visit-notes.tsx'

const measureOf: Readonly<Record<SnapshotItem, Reading['measure']>> = {
  length: 'm',
  ring: 'm',
  photos: 'count',
  pressure: 'Pa',
  rebound: 'clicks',
  compression: 'clicks',
}

/** What the fork held before the pump took its part, where the sheet's chamber is known. */
function BeforeHose({ shown, pump }: { shown: number; pump: Instrument | undefined }) {
  const { sheet } = useJobView()
  const text = useShownText()
  if (sheet?.springKind !== 'air' || (pump?.kind !== 'pump' && pump?.kind !== 'gauge') || !sheet.spring.positiveVolume)
    return null
  const before = beforePump(sheet, sheet.spacers?.value ?? 0, shown, pump)
  return <p className="book">{say('keep.before-hose', { before: text(before, 'Pa') })}</p>
}

function NotKnown({ item, onDone }: { item: SnapshotItem; onDone: () => void }) {
  const { keepText } = useJobView()
  const { write, refusal } = useWriting()
  const [because, setBecause] = useState('')
  const keep = async () => {
    const notKnownBecause = await keepText(because.trim())
    await write('snapshot-kept', { item, reading: null, photos: [], notKnownBecause })
  }
  return (
    <form
      className="keep-form"
      onSubmit={(event) => {
        event.preventDefault()
        if (because.trim()) void keep()
      }}
    >
      <TextField label={say('keep.because')} hint={say('keep.because.note')} value={because} onChange={setBecause} />
      <div className="acts">
        <Button kind="second" size="row" onPress={onDone}>
          {say('page.cancel')}
        </Button>
        <Button kind="main" size="row" type="submit">
          {say('keep.because.act')}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  )
}

function PhotosForm() {
  const { stream } = useJobView()
  const { write, refusal } = useWriting()
  const station = useStation()
  const [unknown, setUnknown] = useState(false)
  const photos = photosInHand(station, stream, 'snapshot-kept')
  if (unknown) return <NotKnown item="photos" onDone={() => setUnknown(false)} />
  const keep = () => {
    const reading = { value: photos.length, measure: 'count', instrument: null, how: null } as const
    return write('snapshot-kept', { item: 'photos', reading, photos: [...photos], notKnownBecause: null })
  }
  return (
    <div className="keep-form">
      <PhotoTaking stream={stream} of="snapshot-kept" photos={photos} />
      <div className="keep-line">
        {photos.length > 0 && (
          <Button kind="main" onPress={() => void keep()}>
            {say('photo.keep', { n: photos.length })}
          </Button>
        )}
        <Button
          kind="second"
          onPress={() => setUnknown(true)}
          name={`${say('keep.not-known')}: ${say('snapshot.photos')}`}
        >
          {say('keep.not-known')}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </div>
  )
}

/** The form before it took the focus away with it: the next number is typed at once, and its pad opens. */
function useNextField() {
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => {
    if (document.activeElement !== document.body) return
    form.current?.querySelector<HTMLElement>('input:not([type=radio])')?.focus()
  }, [])
  return form
}

function KeepForm({ item }: { item: Exclude<SnapshotItem, 'photos'> }) {
  const { instruments } = useJobView()
  const { write, refusal } = useWriting()
  const pumps = gaugesOf(instruments)
  const [value, setValue] = useState<number | null>(null)
  const [pump, setPump] = useLastUsed('gauge', pumps, pumps.length === 1 ? (pumps[0]?.id ?? null) : null)
  const length = item === 'length' || item === 'ring'
  const readWith = useReadWith('length', length ? ['tape', 'caliper'] : [])
  const form = useNextField()
  const [unknown, setUnknown] = useState(false)
  if (unknown) return <NotKnown item={item} onDone={() => setUnknown(false)} />
  const pressure = item === 'pressure'
  const keep = () => {
    if (value === null || (pressure && pump === null)) return
    const reading: Reading = {
      value,
      measure: measureOf[item],
      instrument: pressure ? pump : readWith.picked,
      how: pressure ? 'attached' : null,
    }
    void write('snapshot-kept', { item, reading, photos: [], notKnownBecause: null })
  }
  return (
    <form
      ref={form}
      className="keep-form"
      onSubmit={(event) => {
        event.preventDefault()
        keep()
      }}
    >
      {pressure && (
        <Choice
          label={say('keep.pump.pick')}
          options={pumps.map((one) => ({
            value: one.id,
            label: <span translate="no">{one.name}</span>,
            ...(one.note ? { detail: <span translate="no">{one.note}</span> } : {}),
          }))}
          value={pump}
          onChange={setPump}
        />
      )}
      <div className="keep-line">
        <ReadingField
          label={say(`snapshot.${item}`)}
          hint={say(`keep.${item}.how`)}
          measure={measureOf[item]}
          value={value}
          onChange={setValue}
        />
        <ReadWithPick {...readWith} />
        <Button kind="main" type="submit">
          {say('keep.act')}
        </Button>
        <Button
          kind="second"
          onPress={() => setUnknown(true)}
          name={`${say('keep.not-known')}: ${say(`snapshot.${item}`)}`}
        >
          {say('keep.not-known')}
        </Button>
      </div>
      {pressure && value !== null && <BeforeHose shown={value} pump={pumps.find((one) => one.id === pump)} />}
      <Refused refusal={refusal} />
    </form>
  )
}

function KeptRow({
  item,
  no,
  open,
  after,
}: {
  item: SnapshotItem
  no: number
  open: boolean
  after: SnapshotItem | null
}) {
  const { state, text, instruments } = useJobView()
  const kept = state.snapshot[item]
  const pump = kept?.reading?.instrument ? instruments.find((one) => one.id === kept.reading?.instrument) : undefined
  return (
    <li className={open ? 'keep now' : 'keep'} aria-current={open ? 'step' : undefined}>
      <span className="no" translate="no">
        {no}
      </span>
      <div className="what">
        {/* The open one's field carries the name itself. */}
        {(!open || item === 'photos') && <b>{say(`snapshot.${item}`)}</b>}
        {kept && (
          <small>
            <ByWhom made={kept} /> {pump && <span translate="no">{pump.name}</span>}
          </small>
        )}
        {!kept && !open && after && <small>{say('keep.after', { item: say(`snapshot.${after}`) })}</small>}
        {kept && kept.photos.length > 0 && <PhotoStrip photos={kept.photos} standing />}
        {open && (item === 'photos' ? <PhotosForm /> : <KeepForm item={item} />)}
      </div>
      {kept?.reading && <Shown value={kept.reading.value} measure={kept.reading.measure} hand size="row" />}
      {kept && kept.notKnownBecause !== null && (
        <p className="book not-known" translate="no">
          {say('snapshot.not-known', { reason: text(kept.notKnownBecause) ?? say('book.text-gone') })}
        </p>
      )}
    </li>
  )
}

export function TakeInChapter() {
  const { state, unit, sheet, stream } = useJobView()
  const items = traitsOf(sheet?.kind ?? unit?.kind ?? 'fork-air', sheet).snapshot
  const at = items.findIndex((item) => !state.snapshot[item])
  return (
    <>
      <div className="two-columns">
        <SideHead place="above" title={say('keep.title')} note={say('keep.note')}>
          <ol className="keeps">
            {items.map((item, index) => (
              <KeptRow
                key={item}
                item={item}
                no={index + 1}
                open={index === at && state.next.kind !== 'nothing'}
                after={items[index - 1] ?? null}
              />
            ))}
          </ol>
        </SideHead>
        <VisitNotes />
      </div>
      {at === -1 && (
        <BottomLine>
          <p className="book">{say('keep.done')}</p>
          <LinkButton kind="main" arrow="forward" href={chapterHref(stream, 'look-over')}>
            {say('keep.to-look-over')}
          </LinkButton>
        </BottomLine>
      )}
    </>
  )
}
