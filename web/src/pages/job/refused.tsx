/** Why something was not written: what is in the way, and what to do. */
import { type EntryCheck, say, sayMessage } from '@legwork/trade'
import { Waive } from './waive.tsx'

export function Refused({ refusal }: { refusal: Extract<EntryCheck, { ok: false }> | null }) {
  return (
    <div role="alert">
      {refusal && (
        <p className="refusal">
          <b>{say('page.refused')}</b> {sayMessage(refusal.blocked.because)} <b>{sayMessage(refusal.blocked.act)}</b>
        </p>
      )}
      {refusal?.gate && <Waive gate={refusal.gate} />}
    </div>
  )
}
