/** Taking photos for a job: from the camera or a file, made plain, kept here at once; nothing is sent before it is written down. */
import { type Digest, type PhotoKind, type Stream, say } from '@legwork/trade'
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

/** Photos for one kind of line of this job that no entry names yet, in the order they were taken. */
export function photosInHand(station: ReturnType<typeof useStation>, stream: Stream, of: PhotoKind): readonly Digest[] {
  const { memory } = station.store
  return [...memory.photos.values()]
    .filter((photo) => photo.stream === stream && (photo.of ?? 'snapshot-kept') === of && !memory.isNamed(photo))
    .sort((one, other) => one.takenAt.localeCompare(other.takenAt))
    .map(({ digest }) => digest)
}

interface PhotoTakingProps {
  stream: Stream
  /** The kind of line that will name them. */
  of: PhotoKind
  photos: readonly Digest[]
}

export function PhotoTaking({ stream, of, photos }: PhotoTakingProps) {
  const station = useStation()
  const { person } = useHands()
  const [working, setWorking] = useState(false)
  const [refused, setRefused] = useState<PhotoRefused | 'already' | null>(null)
  const take = async (files: readonly File[]) => {
    if (!person || files.length === 0) return
    setWorking(true)
    setRefused(null)
    for (const file of files) {
      const photo = await plainPhoto(file)
      if (typeof photo === 'string') setRefused(photo)
      else if (!(await station.keepPhoto(stream, person.id, photo, of))) setRefused('already')
    }
    setWorking(false)
  }
  return (
    <div>
      <p className="book">{say(of === 'snapshot-kept' ? 'photo.how' : 'photo.how.short')}</p>
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
