import { type ReactNode, useId } from 'react'
import './tick-box.css'

interface TickBoxProps {
  label: ReactNode
  /** Below the label: who ticked it, or what ticking means. */
  detail?: ReactNode
  ticked: boolean
  /** A tick that may not be taken back has no `onTick` once it is ticked. */
  onTick?: (ticked: boolean) => void
  /** Why it can't be ticked now; shown in place of the detail. */
  shut?: string
}

/** A box of 64 px that takes a violet tick. */
export function TickBox({ label, detail, ticked, onTick, shut }: TickBoxProps) {
  const id = useId()
  const disabled = Boolean(shut) || !onTick
  return (
    // biome-ignore lint/a11y/useSemanticElements: the whole row is the target, and what is written beside the box belongs to it
    <button
      type="button"
      role="checkbox"
      aria-checked={ticked}
      aria-disabled={disabled}
      aria-labelledby={`${id}-label`}
      aria-describedby={`${id}-detail`}
      className={`tick-box${shut ? ' shut' : ''}`}
      onClick={() => {
        if (!disabled) onTick?.(!ticked)
      }}
    >
      <span className="box">
        {ticked && (
          <svg viewBox="0 0 64 64" aria-hidden="true">
            <path d="M14 34l13 14 25-33" pathLength="1" />
          </svg>
        )}
      </span>
      <span className="says">
        <span id={`${id}-label`} className="label">
          {label}
        </span>
        <span id={`${id}-detail`} className={ticked ? 'detail hand' : 'detail'}>
          {shut ?? detail}
        </span>
      </span>
    </button>
  )
}
