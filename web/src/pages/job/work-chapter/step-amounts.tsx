/** What goes in at a step, by the sheet: pieces and oil under the cap, and which oil into the legs. */
import { type StepState, say } from '@legwork/trade'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { useJobView } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'

function useAmounts(step: StepState): string | null {
  const { state, sheet } = useJobView()
  const text = useShownText()
  if (!sheet) return null
  if (step.step === 'cap-torque') {
    const spacers = state.setUp?.spacers ?? sheet.spacers?.value
    const oil = sheet.spring.chamberOil?.value
    if (spacers === undefined) return null
    return oil
      ? say('work.amounts.cap', { n: spacers, oil: text(oil, 'm³') })
      : say('work.amounts.cap.no-oil', { n: spacers })
  }
  if (step.step === 'oil-in') {
    const [left, right] = [sheet.legs?.left.bathOilViscosity?.value, sheet.legs?.right.bathOilViscosity?.value]
    if (!left || !right) return null
    const viscosity = text(left, 'm²/s')
    return left === right
      ? say('work.amounts.oil', { viscosity })
      : say('work.amounts.oil.each', { left: viscosity, right: text(right, 'm²/s') })
  }
  return null
}

export function StepAmounts({ step }: { step: StepState }) {
  const amounts = useAmounts(step)
  return (
    amounts && (
      <p className="note amounts">
        <SourceMark kind="makers-sheet" /> {amounts}
      </p>
    )
  )
}
