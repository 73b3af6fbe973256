/** The limits that measurements of such a unit are judged by: the sheet's own, else common practice. */
import { benchLimits, boundsFor, commonPractice, type Judgeable, judgeables, type Sheet, say } from '@legwork/trade'
import { Fragment, useState } from 'react'
import { QuantityText } from '../../figures/quantity-text.tsx'
import { SourceLine } from '../../figures/source-line.tsx'
import { Button } from '../../ui/button.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { boundSides, finer, LimitChange } from './limit-change.tsx'

interface LimitLinesProps {
  sheet: Sheet
  /** Names of the revisions that are taken; null for an older revision: it is read, not changed. */
  taken: readonly string[] | null
}

function LimitLine({ sheet, what, onChange }: { sheet: Sheet; what: Judgeable; onChange: (() => void) | null }) {
  const own = sheet.limits[what]
  const bounds = own ?? boundsFor(what, sheet.kind)
  if (!bounds) return null
  const { kind } = benchLimits[what]
  return (
    <div className="row sheet-line">
      <div className="name">
        <span className="what">{say(`measure.${what}`)}</span>
        <SourceLine source={own?.source ?? commonPractice} />
      </div>
      <dl className="value bounds">
        {boundSides.map((side) =>
          bounds[side] === undefined ? null : (
            <Fragment key={side}>
              <dt className="book">{say(`sheet.limit.${side}`)}</dt>
              <dd>
                <QuantityText value={bounds[side]} kind={kind} {...finer[kind]} />
              </dd>
            </Fragment>
          ),
        )}
      </dl>
      {onChange && (
        <Button
          kind="second"
          size="row"
          name={say('sheet.change.of', { what: say(`measure.${what}`) })}
          onPress={onChange}
        >
          {say('sheet.change')}
        </Button>
      )}
    </div>
  )
}

export function LimitLines({ sheet, taken }: LimitLinesProps) {
  const [changing, setChanging] = useState<Judgeable | null>(null)
  return (
    <SideHead place="above" title={say('sheet.limits')} note={say('sheet.limits.note')}>
      {judgeables.map((what) =>
        taken && changing === what ? (
          <LimitChange key={what} sheet={sheet} what={what} taken={taken} onDone={() => setChanging(null)} />
        ) : (
          <LimitLine key={what} sheet={sheet} what={what} onChange={taken ? () => setChanging(what) : null} />
        ),
      )}
    </SideHead>
  )
}
