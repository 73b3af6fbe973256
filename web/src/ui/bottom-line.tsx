import type { ReactNode } from 'react'
import './bottom-line.css'

/**
 * The bottom line of a page that scrolls: what is done next, the main act last, at the right thumb. Stands directly in the page,
 * after everything else; it stays in view while the page moves behind it.
 */
export function BottomLine({ children }: { children: ReactNode }) {
  return <div className="bottom-line screen-only">{children}</div>
}
