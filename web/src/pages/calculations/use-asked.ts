/** What was asked last: it stands in the address, so that a reload, the back button and a colleague see the same. */
import { useMemo } from 'react'
import { useLocation, useSearch } from 'wouter'
import { longestInput, readInput, writeInput } from './input-notation.ts'

export interface Asked {
  /** Null before anything was asked, and where the address can't be read. */
  input: Record<string, unknown> | null
  /** Changes with every question. */
  text: string
  isDamaged: boolean
  /** Whether the question fits into an address. */
  isShort: boolean
}

const named = /(?:^|[?&])input=([^&]*)/

/** Questions too long for an address stay here while the page is open. */
const long = new Map<string, Record<string, unknown>>()

export function useAsked(name: string): [Asked, ask: (input: Record<string, unknown>) => void] {
  const search = useSearch()
  const [, go] = useLocation()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the router tells of a change, but takes percent signs away
  const asked = useMemo((): Asked => {
    const text = named.exec(location.search)?.[1] ?? null
    if (text === null) return { input: null, text: '', isDamaged: false, isShort: true }
    const kept = long.get(text)
    if (kept) return { input: kept, text, isDamaged: false, isShort: false }
    const input = readInput(text)
    return { input, text, isDamaged: input === null, isShort: true }
  }, [search])
  function ask(input: Record<string, unknown>): void {
    const written = writeInput(input)
    const isShort = written.length <= longestInput
    const text = isShort ? written : `too-long-${long.size + 1}`
    if (!isShort) long.set(text, input)
    if (text !== asked.text) go(`/calculations/${name}?input=${text}`)
  }
  return [asked, ask]
}
