import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { GateMark } from '../marks/gate-mark.tsx'
import './thumb-edge.css'

export interface EdgePlace {
  name: ReactNode
  href: string
  /** `now`: open before us. `todo`: not begun, written faintly. */
  state: 'now' | 'done' | 'open' | 'shut' | 'todo' | 'place'
  /** Under the name: a time, a count, 'not begun', or what shuts it. */
  detail?: ReactNode
  /** Where the detail stands for something written: kept on this station, or sent to the shop's book. */
  kept?: 'kept' | 'sent'
}

interface ThumbEdgeProps {
  label: string
  of: 'chapters' | 'places'
  places: readonly EdgePlace[]
}

/** The thumb edge: places down the right of a tablet; on a phone a strip of numbers with the open one named. */
export function ThumbEdge({ label, of, places }: ThumbEdgeProps) {
  return (
    <nav className={`thumb-edge ${of}`} aria-label={label}>
      <ol>
        {places.map((place, index) => (
          <li key={place.href} className={place.state}>
            <Link href={place.href} aria-current={place.state === 'now' ? 'page' : undefined}>
              <i className={place.kept} aria-hidden="true">
                {index + 1}
              </i>
              <b>{place.name}</b>
              <small>
                {place.state === 'shut' && <GateMark open={false} size={20} />}
                <span className={place.kept}>{place.detail}</span>
              </small>
            </Link>
          </li>
        ))}
      </ol>
    </nav>
  )
}
