import { useState } from 'react'

interface Written {
  /** As it stands in the draft. */
  shown: string
  unit: string | null
  /** What goes into the draft of what was typed. */
  onType: (typed: string) => unknown
}

interface Typed {
  text: string
  unit: string | null
  type: (text: string) => void
  leave: () => void
}

/**
 * What is typed stays as it was typed until the field is left; the measure beside it stays what it was when the typing
 * began, so that a bare number never changes its meaning under the hand.
 */
export function useTyped(written: Written, change: (value: unknown) => void): Typed {
  const [typed, setTyped] = useState<{ text: string; begun: Written } | null>(null)
  return {
    text: typed?.text ?? written.shown,
    unit: typed ? typed.begun.unit : written.unit,
    type(text) {
      const begun = typed?.begun ?? written
      setTyped({ text, begun })
      change(begun.onType(text))
    },
    leave: () => setTyped(null),
  }
}
