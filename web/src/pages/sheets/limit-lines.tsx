/** The limits that measurements of such a unit are judged by: the sheet's own, else common practice. */
import { type Bounds, benchLimits, boundsFor, commonPractice, judgeables, type Sheet, say } from '@legwork/trade'
import { Fragment } from 'react'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { SourceLine } from '../../figures/source-line.tsx'
import { SideHead } from '../../ui/ledger.tsx'

const sides = ['failBelow', 'watchBelow', 'watch', 'fail'] as const satisfies readonly (keyof Bounds)[]

/** Clearances are read in hundredths, return times in seconds. */
const finer = {
  length: { measure: 'mm', digits: 2 },
  duration: { measure: 's', digits: 2 },
} as const

export function LimitLines({ sheet }: { sheet: Sheet }) {
  return (
    <SideHead place="above" title={say('sheet.limits')} note={say('sheet.limits.note')}>
      {judgeables.map((what) => {
        const own = sheet.limits[what]
        const bounds = own ?? boundsFor(what, sheet.kind)
        if (!bounds) return null
        const { kind } = benchLimits[what]
        const manner = kind === 'length' || kind === 'duration' ? finer[kind] : {}
        return (
          <div key={what} className="row sheet-line">
            <div className="name">
              <span className="what">{say(`measure.${what}`)}</span>
              <SourceLine source={own?.source ?? commonPractice} />
            </div>
            <dl className="value bounds">
              {sides.map((side) =>
                bounds[side] === undefined ? null : (
                  <Fragment key={side}>
                    <dt className="book">{say(`sheet.limit.${side}`)}</dt>
                    <dd>
                      <QuantityText value={bounds[side]} kind={kind} {...manner} />
                    </dd>
                  </Fragment>
                ),
              )}
            </dl>
          </div>
        )
      })}
    </SideHead>
  )
}
