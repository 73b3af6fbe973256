/** Where a photo is: on this station, with the server, removed, or not here yet. */
import type { Digest } from '@legwork/trade'
import { useEffect, useState } from 'react'
import { api } from '../api/client.ts'
import { useStation, useStationStatus } from '../offline/hooks.tsx'

export type PhotoHere =
  | { state: 'looking' }
  | { state: 'shown'; href: string }
  | { state: 'removed'; on: string | null }
  | { state: 'not-here' }

/** A photo to show. One that was taken here shows without the network; the server's word on a removed one is final. */
export function usePhoto(digest: Digest): PhotoHere {
  const station = useStation()
  const { line } = useStationStatus()
  const [here, setHere] = useState<PhotoHere>({ state: 'looking' })
  const own = station.store.memory.photos.get(digest)?.state ?? null
  const removedOn = station.store.memory.texts.get(digest)?.removedOn ?? null
  // biome-ignore lint/correctness/useExhaustiveDependencies: `line`: looked for again when the network comes back
  useEffect(() => {
    let gone = false
    let url: string | null = null
    const show = (next: PhotoHere) => {
      if (!gone) setHere(next)
    }
    const look = async () => {
      if (removedOn) return show({ state: 'removed', on: removedOn })
      const bytes = await station.store.photoBytes(digest)
      if (bytes && !gone) {
        url = URL.createObjectURL(new Blob([bytes], { type: 'image/jpeg' }))
        show({ state: 'shown', href: url })
      }
      if (own === 'kept' || own === 'refused') return
      const there = await api.hasPhoto(station.workshop, digest).catch(() => null)
      if (there === 'gone') {
        if (bytes) await station.dropPhoto(digest)
        return show({ state: 'removed', on: null })
      }
      if (bytes) return
      show(there === 'here' ? { state: 'shown', href: api.photo(station.workshop, digest) } : { state: 'not-here' })
    }
    void look()
    return () => {
      gone = true
      if (url) URL.revokeObjectURL(url)
    }
  }, [station, digest, own, removedOn, line])
  return here
}
