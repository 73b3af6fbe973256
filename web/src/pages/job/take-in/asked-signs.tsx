/** Signs that the rider was asked about: there, not there, or cannot tell. What was not asked stays open. */
import { isWordKey, say, sayMessage, type UnitKind, type WordKey } from '@legwork/trade'
import { faultSigns } from '@legwork/trade/faults/signs.ts'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'
import '../look-over.css'

interface AskedSign {
  id: string
  says: WordKey
}

/** What a rider of such a unit can tell. */
function askable(kind: UnitKind): readonly AskedSign[] {
  return faultSigns.flatMap((sign) => {
    const kinds: readonly string[] | null = 'kinds' in sign ? sign.kinds : null
    const says = `look.sign.${sign.id}`
    const told = sign.seenBy.some((by) => by === 'rider') && (kinds === null || kinds.includes(kind))
    return told && isWordKey(says) ? [{ id: sign.id, says }] : []
  })
}

export function AskedSigns() {
  const { state, unit, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const signs = askable(sheet?.kind ?? unit?.kind ?? 'fork-air')
  const last = (id: string) => state.signs.findLast((one) => one.sign === id)
  const told = signs.filter(({ id }) => last(id)?.by === 'said')
  const options = (['present', 'absent', 'unknown'] as const).map((value) => ({
    value,
    label: say(value === 'unknown' ? 'keep.sign.unknown' : `look.sign.${value}`),
  }))
  return (
    <SideHead place="above" title={say('keep.signs')} note={say('keep.signs.note')} className="signs">
      {told.length > 0 && (
        <p>
          {told
            .map(({ id, says }) =>
              say(`keep.sign.told.${last(id)?.state ?? 'unknown'}`, { sign: sayMessage({ key: says, params: {} }) }),
            )
            .join(' ')}
        </p>
      )}
      <details>
        <summary>{say('keep.signs.ask', { n: signs.length })}</summary>
        {signs.map(({ id, says }) => (
          <Choice
            key={id}
            label={sayMessage({ key: says, params: {} })}
            options={options}
            value={last(id)?.state ?? null}
            onChange={(value) => void write('sign-noted', { sign: id, state: value, by: 'said' })}
          />
        ))}
      </details>
      <Refused refusal={refusal} />
    </SideHead>
  )
}
