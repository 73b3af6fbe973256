/** What is laid out for a plan: pieces and amounts added up, oil and washers leg by leg. */
import { legs, type PlannedStep, type PlanSupply, planSupplies, type Sheet, say } from '@legwork/trade'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { Shown, useShownText } from '../readings.tsx'
import '../job-words.ts'

/** What goes into or onto each leg, as the sheet says. */
function useLegsText(): (supply: PlanSupply) => string | null {
  const text = useShownText()
  return ({ perLeg }) => {
    if (!perLeg) return null
    return legs
      .filter((leg) => leg in perLeg)
      .map((leg) => {
        const value = perLeg[leg]?.value
        const what = value === undefined ? say('supply.missing') : typeof value === 'number' ? text(value, 'm³') : value
        return say('supply.of-leg', { what, leg: say(`leg.${leg}`) })
      })
      .join(', ')
  }
}

function HowMuch({ supply }: { supply: PlanSupply }) {
  const { pieces, usual, volume } = supply
  if (volume !== null) return <Shown value={volume} measure="m³" />
  if (pieces !== null) return <span translate="no">{pieces}</span>
  if (usual)
    return (
      <span className="usual" translate="no">
        <SourceMark kind="common-practice" /> {usual.low}–{usual.high} <small>{usual.measure}</small>
      </span>
    )
  return <small className="book">{say('supply.missing')}</small>
}

/** Nobody weighs or counts a cloth. */
const uncounted = ({ pieces, usual, perLeg, volume, what }: PlanSupply): boolean =>
  pieces === null && usual === null && perLeg === null && volume === null && what !== 'chamber-oil'

export function PlanParts({ steps, sheet }: { steps: readonly PlannedStep[]; sheet: Sheet }) {
  const legsText = useLegsText()
  const all = planSupplies(steps, sheet)
  const others = all.filter(uncounted).map(({ what }) => say(`supply.${what}`))
  if (all.length === 0) return null
  return (
    <SideHead place="above" title={say('agree.parts')} note={say('agree.parts.note')} className="plan-parts">
      {all
        .filter((supply) => !uncounted(supply))
        .map((supply) => (
          <ValueRow
            key={supply.what}
            name={say(`supply.${supply.what}`)}
            note={legsText(supply) && <span translate="no">{legsText(supply)}</span>}
          >
            <HowMuch supply={supply} />
          </ValueRow>
        ))}
      {others.length > 0 && <p className="book others">{say('supply.others', { what: others.join(', ') })}</p>}
    </SideHead>
  )
}
