/** Why it came: what is asked for, what may be spent, until when, what is left on it; the bike it came on, or alone. */
import { formatQuantity } from '@legwork/engine'
import { say } from '@legwork/trade'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import type { BikeDraft, VisitDraft } from './take-in-draft.ts'

interface VisitPartProps {
  draft: VisitDraft
  onChange: (draft: VisitDraft) => void
  /** One person at home asks nobody, spends nobody's money and promises nothing. */
  home: boolean
  /** A further job of a visit: promise and what was left on are the visit's. */
  further: boolean
}

export function VisitPart({ draft, onChange, home, further }: VisitPartProps) {
  const change = (patch: Partial<VisitDraft>) => onChange({ ...draft, ...patch })
  return (
    <SideHead place="above" title={say(home ? 'take-in.visit.home' : 'take-in.visit')}>
      <TextField
        label={say(home ? 'take-in.asked.home' : 'take-in.asked')}
        value={draft.asked}
        onChange={(asked) => change({ asked })}
        lines={2}
      />
      <div className="pair">
        {!home && (
          <QuantityInput
            label={say('take-in.spend')}
            hint={say('take-in.spend.note')}
            kind="number"
            value={draft.spend}
            onChange={(spend) => change({ spend })}
          />
        )}
        {!home && !further && (
          <TextField
            label={say('take-in.promised')}
            type="date"
            value={draft.promised}
            onChange={(promised) => change({ promised })}
          />
        )}
      </div>
      {!further && (
        <TextField
          label={say('take-in.left-with')}
          hint={say('take-in.left-with.note')}
          value={draft.leftWith}
          onChange={(leftWith) => change({ leftWith })}
        />
      )}
    </SideHead>
  )
}

interface BikePartProps {
  draft: BikeDraft
  onChange: (draft: BikeDraft) => void
  /** Its bike is in the register: what is known of it is folded. */
  known: boolean
}

export function BikePart({ draft, onChange, known }: BikePartProps) {
  const change = (patch: Partial<BikeDraft>) => onChange({ ...draft, ...patch })
  const fields = (
    <>
      <TextField label={say('take-in.bike.name')} value={draft.name} onChange={(name) => change({ name })} />
      <QuantityInput
        label={say('take-in.bike.head-angle')}
        kind="angle"
        value={draft.headAngle}
        onChange={(headAngle) => change({ headAngle })}
      />
      <QuantityInput
        label={say('take-in.bike.front-mass')}
        kind="mass"
        digits={2}
        value={draft.frontMass}
        onChange={(frontMass) => change({ frontMass })}
      />
    </>
  )
  return (
    <SideHead place="above" title={say('take-in.bike')}>
      <Choice
        label={say('take-in.came')}
        options={(['on-bike', 'alone'] as const).map((value) => ({ value, label: say(`take-in.came.${value}`) }))}
        value={draft.here ? 'on-bike' : 'alone'}
        onChange={(came) => change({ here: came === 'on-bike' })}
      />
      {!draft.here && <p className="book">{say('take-in.came.alone.note')}</p>}
      {known ? (
        <details>
          <summary>
            {say('take-in.bike.known', {
              name: draft.name || say('take-in.bike'),
              angle: draft.headAngle === null ? '–' : formatQuantity(draft.headAngle, '°'),
            })}
          </summary>
          {fields}
        </details>
      ) : (
        fields
      )}
    </SideHead>
  )
}
