/** Taking photos for a job: from the camera or a file, made plain, kept here at once; nothing is sent before it is written down. */
import { type Digest, type Stream, say } from '@legwork/trade'
import { useState } from 'react'
import { useHands, useStation } from '../offline/hooks.tsx'
import { PhotoStrip } from './photo-strip.tsx'
import { type PhotoRefused, plainPhoto } from './plain-photo.ts'
import './photo-strip.css'

interface PhotoInputProps {
  label: string
  camera: boolean
  onFiles: (files: readonly File[]) => void
}

function PhotoInput({ label, camera, onFiles }: PhotoInputProps) {
  return (
    <label className="button second size-row photo-input">
      <span>{label}</span>
      <input
        type="file"
        accept="image/*"
        {...(camera ? { capture: 'environment' as const } : { multiple: true })}
        onChange={(event) => {
          onFiles([...(event.target.files ?? [])])
          // The same file chosen again is a choice too.
          event.target.value = ''
        }}
      />
    </label>
  )
}

/** Photos of this job that no entry names yet, in the order they were taken. */
export function photosInHand(station: ReturnType<typeof useStation>, stream: Stream): readonly Digest[] {
  const { memory } = station.store
  return [...memory.photos.values()]
    .filter((photo) => photo.stream === stream && !memory.isNamed(photo))
    .sort((one, other) => one.takenAt.localeCompare(other.takenAt))
    .map(({ digest }) => digest)
}

export function PhotoTaking({ stream, photos }: { stream: Stream; photos: readonly Digest[] }) {
  const station = useStation()
  const { person } = useHands()
  const [working, setWorking] = useState(false)
  const [refused, setRefused] = useState<PhotoRefused | null>(null)
  const take = async (files: readonly File[]) => {
    if (!person || files.length === 0) return
    setWorking(true)
    setRefused(null)
    for (const file of files) {
      const photo = await plainPhoto(file)
      if (typeof photo === 'string') setRefused(photo)
      else await station.keepPhoto(stream, person.id, photo)
    }
    setWorking(false)
  }
  return (
    <div>
      <p className="book">{say('photo.how')}</p>
      {photos.length > 0 && <PhotoStrip photos={photos} onDrop={(digest) => void station.dropPhoto(digest)} />}
      <div className="acts">
        <PhotoInput label={say('photo.take')} camera onFiles={(files) => void take(files)} />
        <PhotoInput label={say('photo.choose')} camera={false} onFiles={(files) => void take(files)} />
      </div>
      <div role="status">{working && <p className="book">{say('photo.working')}</p>}</div>
      <div role="alert">{refused && <p className="refusal">{say(`photo.${refused}`)}</p>}</div>
    </div>
  )
}
