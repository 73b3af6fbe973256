/** What lines, marks and hatchings of a picture are, below it: words in a picture would cover one another on a phone. */
import type { ReactNode } from 'react'
import { PlotLine } from '../../../charts/plot.tsx'

export function LineKey({ children }: { children: ReactNode }) {
  return <ul className="calc-lines-key">{children}</ul>
}

/** A sample, 44 by 16, and what it is. */
export function KeyOf({ sample, children }: { sample: ReactNode; children: ReactNode }) {
  return (
    <li>
      <svg width={44} height={16} aria-hidden="true">
        {sample}
      </svg>
      <span>{children}</span>
    </li>
  )
}

const plain = { x: (x: number) => x, y: (y: number) => y }
const across = [
  { x: 1, y: 8 },
  { x: 43, y: 8 },
]

export function KeyLine({ look }: Pick<Parameters<typeof PlotLine>[0], 'look'>) {
  return <PlotLine frame={plain} points={across} {...(look ? { look } : {})} />
}
