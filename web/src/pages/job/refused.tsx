/** Why something was not written, and the gate in the way where it may be passed. */
import { Waive } from './waive.tsx'
import { type EntryRefusal, WhyRefused } from './why-refused.tsx'

export function Refused({ refusal }: { refusal: EntryRefusal | null }) {
  return (
    <div role="alert">
      {refusal && <WhyRefused refusal={refusal} />}
      {refusal?.gate && <Waive gate={refusal.gate} />}
    </div>
  )
}
