import type { ReactNode } from 'react'
import './ticks.css'

/** Words of which any may be ticked. */
export function Ticks({ children }: { children: ReactNode }) {
  return <div className="calc-ticks">{children}</div>
}

interface TickProps {
  isTicked: boolean
  onTick: (ticked: boolean) => void
  children: ReactNode
}

export function Tick({ isTicked, onTick, children }: TickProps) {
  return (
    <label>
      <input type="checkbox" checked={isTicked} onChange={({ target }) => onTick(target.checked)} />
      <span>{children}</span>
    </label>
  )
}
