/** A text that an act can't do without: pressed without it, its field says what is missing, so no button does nothing. */
import { useState } from 'react'

interface NeededText {
  /** For the field. */
  field: { value: string; onChange: (value: string) => void; refusal: string | null }
  /** What was written, without the space around it; null where nothing was, and the field says so from then on. */
  take: () => string | null
  clear: () => void
}

/** @param missing  what the field says once it was pressed without, a whole sentence */
export function useNeededText(missing: string): NeededText {
  const [value, setValue] = useState('')
  const [tried, setTried] = useState(false)
  const words = value.trim()
  return {
    field: {
      value,
      onChange: (next) => {
        setValue(next)
        setTried(false)
      },
      refusal: tried && words === '' ? missing : null,
    },
    take: () => {
      setTried(words === '')
      return words === '' ? null : words
    },
    clear: () => {
      setValue('')
      setTried(false)
    },
  }
}
