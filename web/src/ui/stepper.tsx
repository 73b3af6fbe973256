import type { ReactNode } from 'react'
import './stepper.css'

interface StepperProps {
  label: string
  /** As it is shown, with its unit. */
  value: ReactNode
  /** Spoken names of the two buttons, e.g. 'less pressure'. */
  less: string
  more: string
  onLess: () => void
  onMore: () => void
  /** The value can't go further this way. */
  atLeast?: boolean
  atMost?: boolean
}

const Sign = ({ d }: { d: string }) => (
  <svg width="26" height="26" viewBox="0 0 24 24" aria-hidden="true">
    <path d={d} stroke="currentColor" strokeWidth="2.8" strokeLinecap="round" />
  </svg>
)

/** A value between two buttons of 56 × 64 px. */
export function Stepper({ label, value, less, more, onLess, onMore, atLeast = false, atMost = false }: StepperProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset can't be laid out as a grid in every browser
    <div className="stepper" role="group" aria-label={label}>
      <button type="button" aria-label={less} aria-disabled={atLeast} onClick={atLeast ? undefined : onLess}>
        <Sign d="M5 12h14" />
      </button>
      <div aria-live="polite">
        <small>{label}</small>
        <b>{value}</b>
      </div>
      <button type="button" aria-label={more} aria-disabled={atMost} onClick={atMost ? undefined : onMore}>
        <Sign d="M5 12h14M12 5v14" />
      </button>
    </div>
  )
}
