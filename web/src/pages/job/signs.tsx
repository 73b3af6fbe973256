/** Signs: there, not there, or not looked at. Not mentioned is not absent. */
import { say } from '@legwork/trade'
import { Choice } from '../../ui/choice.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { useJobView, useWriting } from './job-view.tsx'
import { Refused } from './refused.tsx'
import './look-over.css'

export const signs = ['S03', 'S06', 'S15', 'S16', 'S17', 'S19', 'S20', 'S23'] as const
export type SignId = (typeof signs)[number]
export const isSign = (text: string): text is SignId => signs.some((sign) => sign === text)

export function Signs() {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const stateOf = (sign: SignId) => state.signs.findLast((one) => one.sign === sign)?.state ?? null
  const options = (['present', 'absent', 'unknown'] as const).map((value) => ({
    value,
    label: say(`look.sign.${value}`),
  }))
  return (
    <SideHead place="above" title={say('look.signs')} note={say('look.signs.note')} className="signs">
      {signs.map((sign) => (
        <Choice
          key={sign}
          label={say(`look.sign.${sign}`)}
          options={options}
          value={stateOf(sign)}
          onChange={(value) => void write('sign-noted', { sign, state: value, by: 'seen' })}
        />
      ))}
      <Refused refusal={refusal} />
    </SideHead>
  )
}
