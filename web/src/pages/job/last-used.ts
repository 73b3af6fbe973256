/** Which instrument is offered first: the one that was taken last for the same thing on this station. */
import type { Instrument } from '@legwork/trade'
import { useState } from 'react'

const keyOf = (what: string): string => `legwork.last.${what}`

/** @param what  what it is taken for, e.g. `pump` or `measure.clearance` */
export function lastUsed(what: string, among: readonly Instrument[]): string | null {
  const said = localStorage.getItem(keyOf(what))
  return among.find(({ id, putAway }) => id === said && !putAway)?.id ?? null
}

export function rememberUsed(what: string, id: string | null): void {
  if (id === null) localStorage.removeItem(keyOf(what))
  else localStorage.setItem(keyOf(what), id)
}

/** What is picked and how to pick another; `first` is offered while none was ever taken. */
export function useLastUsed(
  what: string,
  among: readonly Instrument[],
  first: string | null = null,
): readonly [picked: string | null, pick: (id: string | null) => void] {
  const [picked, setPicked] = useState<string | null>(() => lastUsed(what, among) ?? first)
  const pick = (id: string | null): void => {
    setPicked(id)
    rememberUsed(what, id)
  }
  return [picked, pick]
}

/** The words for what was used, begun with those of last time: the same bottle stands there for weeks. */
export function useUsedText(
  what: string | null,
): readonly [text: string, change: (text: string) => void, remember: () => void] {
  // What was found in a unit is that unit's own.
  const key = what === null || what === 'spacers-found' || what === 'spacers-put' ? null : `legwork.used.${what}`
  const [text, setText] = useState(() => (key ? (localStorage.getItem(key) ?? '') : ''))
  const remember = (): void => {
    if (key) localStorage.setItem(key, text.trim())
  }
  return [text, setText, remember]
}
