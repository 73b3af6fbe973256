/** What is in the way of a line, and what to do, in a sentence. */
import { type EntryCheck, say, sayMessage } from '@legwork/trade'

export type EntryRefusal = Extract<EntryCheck, { ok: false }>

export function WhyRefused({ refusal }: { refusal: EntryRefusal }) {
  const { because, act } = refusal.blocked
  return (
    <p className="refusal">
      <b>{say('page.refused')}</b> {sayMessage(because)} <b>{sayMessage(act)}</b>
    </p>
  )
}
