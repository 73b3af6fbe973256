/** Causes as a technician reads them: how likely before and after the signs, in words and bars, never in decimals. */

import { say } from '@legwork/trade'
import { likelihood } from '@legwork/trade/faults/fault-list.ts'
import { px } from '../../../charts/number-text.ts'
import { isRecord } from '../draft.ts'
import { ChoiceName } from '../names.tsx'
import type { PictureProps } from './picture.ts'

const most = 8
const bar = { width: 180, height: 30 }

interface Ranked {
  fault: string
  prior: number
  posterior: number
}

function rankingOf({ ranking }: Record<string, unknown>): Ranked[] {
  if (!Array.isArray(ranking)) return []
  return ranking.filter(
    (one): one is Ranked =>
      isRecord(one) &&
      typeof one.fault === 'string' &&
      typeof one.prior === 'number' &&
      typeof one.posterior === 'number',
  )
}

/** A pointer where it stood before, solid up to where the signs bring it. */
function Bar({ prior, posterior }: Ranked) {
  const at = (share: number) => px(share * (bar.width - 2) + 1)
  return (
    <svg width={bar.width} height={bar.height} viewBox={`0 0 ${bar.width} ${bar.height}`} aria-hidden="true">
      <path d={`M1 22H${bar.width - 1}M1 17v10M${bar.width - 1} 17v10M${bar.width / 2} 19v6`} stroke="var(--ink)" />
      <rect x={1} y={8} width={px(posterior * (bar.width - 2))} height={9} fill="var(--ink)" />
      <path d={`M${at(prior)} 7l-5 -6h10z`} fill="var(--paper)" stroke="var(--ink)" strokeWidth={1.2} />
    </svg>
  )
}

export function DiagnosePicture({ output }: PictureProps) {
  const ranked = rankingOf(output).slice(0, most)
  return (
    <figure className="calc-ranking">
      <figcaption className="book">{say('calc.picture.diagnose')}</figcaption>
      <ol>
        {ranked.map((one) => (
          <li key={one.fault}>
            <span>
              <b>
                <ChoiceName word={one.fault} path={['fault']} />
              </b>
              <span className="book">{say(`calc.likely.${likelihood(one.posterior)}`)}</span>
            </span>
            <Bar {...one} />
          </li>
        ))}
      </ol>
    </figure>
  )
}
