import { useSyncExternalStore } from 'react'

const query = '(min-width: 1280px)'

function subscribe(changed: () => void): () => void {
  const list = matchMedia(query)
  list.addEventListener('change', changed)
  return () => list.removeEventListener('change', changed)
}

/** Whether the page is a desktop's: wide enough for a drawing that stays in view. */
export const useWide = (): boolean => useSyncExternalStore(subscribe, () => matchMedia(query).matches)
