/** Signs: there, not there, or not looked at. Not mentioned is not absent. */
import { say } from '@legwork/trade'
import type { SignId } from '@legwork/trade/faults/signs.ts'
import { signsOf } from '@legwork/trade/faults/signs-of.ts'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'
import '../look-over.css'

export function Signs() {
  const { state, sheet, unit } = useJobView()
  const { write, refusal } = useWriting()
  const { first, others } = signsOf(sheet?.kind ?? unit?.kind ?? 'fork-air', 'bench')
  const stateOf = (sign: SignId) => state.signs.findLast((one) => one.sign === sign)?.state ?? null
  const options = (['present', 'absent', 'unknown'] as const).map((value) => ({
    value,
    label: say(`look.sign.${value}`),
  }))
  const rows = (signs: readonly SignId[]) =>
    signs.map((sign) => (
      <Choice
        key={sign}
        label={say(`look.sign.${sign}`)}
        options={options}
        value={stateOf(sign)}
        onChange={(value) => void write('sign-noted', { sign, state: value, by: 'seen' })}
      />
    ))
  return (
    <SideHead place="above" title={say('look.signs')} note={say('look.signs.note')} className="signs">
      {rows(first)}
      <details open={others.some((sign) => stateOf(sign) !== null) || undefined}>
        <summary>{say('look.signs.others')}</summary>
        {rows(others)}
      </details>
      <Refused refusal={refusal} />
    </SideHead>
  )
}
