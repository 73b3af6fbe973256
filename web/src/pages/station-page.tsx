import type { Delivery } from '@legwork/contract'
import { say } from '@legwork/trade'
import { useState } from 'react'
import { api, Refused } from '../api/client.ts'
import { useStation, useStationStatus } from '../offline/hooks.tsx'
import { leaveWorkshop } from '../offline/joining.ts'
import { saveFile } from '../offline/save-file.ts'
import type { Station } from '../offline/station.ts'
import { readInFile, unsentFileOf } from '../offline/unsent-file.ts'
import { Button } from '../ui/button.tsx'
import { Choice } from '../ui/choice.tsx'
import { SideHead } from '../ui/ledger.tsx'
import { LetterheadPart } from './letterhead.tsx'
import { ShopFrame } from './shop-frame.tsx'
import { chooseTheme, chosenTheme, type Theme } from './theme.ts'
import './station-page.css'

async function saveUnsent(station: Station): Promise<void> {
  const { store, workshop, id } = station
  const photos = await Promise.all(
    store.memory.unsentPhotos.map(async ({ digest, person }) => ({
      digest,
      person,
      bytes: await store.photoBytes(digest),
    })),
  )
  const here = photos.flatMap(({ bytes, ...of }) => (bytes ? [{ ...of, bytes }] : []))
  saveFile('legwork-unsent.json', unsentFileOf(workshop, id, store.memory.unsent, here))
}

function useReadIn() {
  const { workshop } = useStation()
  const [said, setSaid] = useState<string | null>(null)
  const deliver = (delivery: Delivery) => api.deliver(workshop, delivery)
  const deliverPhoto = (of: Parameters<typeof api.putPhoto>[1], bytes: ArrayBuffer) =>
    api.putPhoto(workshop, of, bytes).catch((error: unknown) => {
      // A picture that the server does not take keeps the others from nothing.
      if (!(error instanceof Refused)) throw error
    })
  const readIn = async (file: File | undefined) => {
    if (!file) return
    try {
      const read = await readInFile(await file.text(), workshop, deliver, deliverPhoto)
      setSaid(read.ok ? say('station.read-in.done', read) : say(`station.read-in.${read.because}`))
    } catch {
      setSaid(say('station.read-in.no-network'))
    }
  }
  return { said, readIn }
}

function RefusedLines() {
  const station = useStation()
  const refused = [...station.store.memory.refused.values()]
  if (refused.length === 0) return null
  return (
    <SideHead title={say('station.refused')} note={say('station.refused.note')}>
      {refused.map(({ stationNo, errors }) => (
        <div key={stationNo} className="row refused-row">
          {errors.map((error) => (
            <p key={error.field + error.code} className="book">
              {say('station.refused.line', error)}
            </p>
          ))}
          <Button kind="second" size="row" onPress={() => station.readAway(stationNo)}>
            {say('station.read-away')}
          </Button>
        </div>
      ))}
    </SideHead>
  )
}

/** What is kept here and what is sent; the way out by a file; whether the browser keeps the book; day or night. */
export function StationPage() {
  const station = useStation()
  const { line, unsent, unsentPhotos, delivering, storageKept } = useStationStatus()
  const { said, readIn } = useReadIn()
  const [theme, setTheme] = useState<Theme>(chosenTheme)
  const storage = storageKept === null ? 'asked' : storageKept ? 'kept' : 'not-kept'
  const themes: readonly Theme[] = ['machine', 'light', 'dark']
  return (
    <ShopFrame place={null} title={say('station.title')}>
      <h1>{say('station.title')}</h1>
      <SideHead title={say('place.book')}>
        <p className="said">
          {line === 'closed' ? say('station.line.closed', { n: unsent - unsentPhotos }) : say(`station.line.${line}`)}
        </p>
        <p className="said">
          {unsent > 0 ? say('station.unsent', { n: unsent - unsentPhotos }) : say('station.nothing-unsent')}
        </p>
        {unsentPhotos > 0 && <p className="said">{say('photo.unsent', { n: unsentPhotos })}</p>}
        {delivering.state === 'stuck' && <p className="refusal">{say('station.stuck', { says: delivering.says })}</p>}
        <div className="acts">
          <Button kind="second" onPress={() => void saveUnsent(station)}>
            {say('station.save')}
          </Button>
          <label className="button second file">
            <span>{say('station.read-in')}</span>
            <input type="file" accept="application/json,.json" onChange={(event) => readIn(event.target.files?.[0])} />
          </label>
        </div>
        <p role="status" className="said">
          {said}
        </p>
      </SideHead>
      <RefusedLines />
      <LetterheadPart />
      <SideHead title={say('station.storage')}>
        <p className="said">{say(`station.storage.${storage}`)}</p>
      </SideHead>
      <SideHead title={say('station.theme')}>
        <Choice
          quiet
          label={say('station.theme')}
          options={themes.map((value) => ({ value, label: say(`station.theme.${value}`) }))}
          value={theme}
          onChange={(chosen) => {
            chooseTheme(chosen)
            setTheme(chosen)
          }}
        />
        <div className="acts">
          <Button kind="second" onPress={() => void leaveWorkshop().then(() => location.assign('/'))}>
            {say('station.leave')}
          </Button>
        </div>
      </SideHead>
    </ShopFrame>
  )
}
