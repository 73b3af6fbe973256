/** What a reading is taken with: the one taken last for the same thing is offered first. */
import { type Instrument, say } from '@legwork/trade'
import { useId } from 'react'
import { useJobView } from './job-view.tsx'
import { useLastUsed } from './last-used.ts'

export interface ReadWith {
  offered: readonly Instrument[]
  picked: string | null
  pick: (id: string | null) => void
}

/**
 * @param what   what is read, e.g. `length`
 * @param kinds  what it can be read with; where the shop has one of them only, that one is offered
 */
export function useReadWith(what: string, kinds: readonly Instrument['kind'][]): ReadWith {
  const { instruments } = useJobView()
  const offered = instruments.filter((one) => !one.putAway && kinds.includes(one.kind))
  const [picked, pick] = useLastUsed(`read.${what}`, offered, offered.length === 1 ? (offered[0]?.id ?? null) : null)
  return { offered, picked, pick }
}

/** Nothing where the shop has no such instrument. */
export function ReadWithPick({ offered, picked, pick }: ReadWith) {
  const id = useId()
  if (offered.length === 0) return null
  return (
    <p className="read-with">
      <label htmlFor={id}>{say('look.add.with')}</label>
      <select id={id} value={picked ?? ''} onChange={(event) => pick(event.target.value || null)}>
        <option value="">{say('look.add.with.none')}</option>
        {offered.map((one) => (
          <option key={one.id} value={one.id} translate="no">
            {one.name}
          </option>
        ))}
      </select>
    </p>
  )
}
