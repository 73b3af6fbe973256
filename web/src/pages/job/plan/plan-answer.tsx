/** Who answers, what it costs as it was told, and what may be spent without asking. At home there is nobody to ask. */
import { say } from '@legwork/trade'
import { QuantityInput } from '../../../figures/quantity-input.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { useJobView } from '../job-view.tsx'

export interface PlanAnswerDraft {
  by: 'rider' | 'workshop'
  /** In the shop's money, as it was told; null where nobody named one. */
  price: number | null
}

/**
 * Why the workshop may not answer itself.
 *
 * @param spend  what may be spent without asking; null: ask first
 */
export function overSpend({ by, price }: PlanAnswerDraft, spend: number | null): string | null {
  if (by === 'rider') return null
  if (spend === null) return say('agree.spend.none')
  if (price === null) return say('agree.spend.no-price', { spend })
  const over = Math.round((price - spend) * 100) / 100
  return over > 0 ? say('agree.spend.over', { over, spend }) : null
}

interface PlanAnswerProps {
  given: PlanAnswerDraft
  onGiven: (given: PlanAnswerDraft) => void
}

export function PlanAnswer({ given, onGiven }: PlanAnswerProps) {
  const { state, rider, home } = useJobView()
  const spend = state.opened?.spendAllowed ?? null
  if (home)
    return (
      <SideHead place="above" title={say('agree.answer.home')}>
        {null}
      </SideHead>
    )
  const why = overSpend(given, spend)
  return (
    <SideHead place="above" title={say('agree.answer')}>
      <QuantityInput
        label={say('agree.price')}
        hint={spend === null ? say('agree.price.note') : say('agree.price.spend', { spend })}
        kind="number"
        value={given.price}
        onChange={(price) => onGiven({ ...given, price })}
      />
      <Choice
        label={say('agree.answer.by')}
        options={(['rider', 'workshop'] as const).map((value) => ({
          value,
          label: say(value === 'rider' && !rider ? 'agree.by.bringer' : `agree.by.${value}`),
          ...(value === 'workshop'
            ? { detail: spend === null ? say('agree.spend.none') : say('agree.spend', { spend }) }
            : {}),
        }))}
        value={given.by}
        onChange={(by) => onGiven({ ...given, by })}
      />
      <div role="alert">{why && <p className="refusal">{why}</p>}</div>
    </SideHead>
  )
}
