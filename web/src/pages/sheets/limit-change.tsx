/** Changing a limit: its bounds and the document that says them; or taking the sheet's own away again. */
import type { MeasureName } from '@legwork/engine'
import {
  type Bounds,
  benchLimits,
  boundsFor,
  checkSheet,
  type Judgeable,
  type Limit,
  nextRevision,
  type Sheet,
  type Source,
  say,
} from '@legwork/trade'
import { useState } from 'react'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { measureFor } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'
import { useWriteRegister } from '../../offline/hooks.tsx'
import { digitsOf } from '../../sheet-form/place-field.tsx'
import { SourceForm, sourceDraftOf, useSourceOf } from '../../sheet-form/source-form.tsx'
import { Button } from '../../ui/button.tsx'

export const boundSides = ['failBelow', 'watchBelow', 'watch', 'fail'] as const satisfies readonly (keyof Bounds)[]
type Side = (typeof boundSides)[number]
type Drafts = { readonly [S in Side]: number | null }

/** Clearances are read in hundredths, return times in seconds. */
export const finer: { [kind: string]: { measure: MeasureName; digits: number } } = {
  length: { measure: 'mm', digits: 2 },
  duration: { measure: 's', digits: 2 },
}

const draftsOf = (bounds: Bounds | null): Drafts => ({
  failBelow: bounds?.failBelow ?? null,
  watchBelow: bounds?.watchBelow ?? null,
  watch: bounds?.watch ?? null,
  fail: bounds?.fail ?? null,
})

function limitOf(drafts: Drafts, source: Source): Limit {
  const given = boundSides.filter((side) => drafts[side] !== null).map((side) => [side, drafts[side]] as const)
  return { ...Object.fromEntries(given), source }
}

interface LimitChangeProps {
  sheet: Sheet
  what: Judgeable
  /** Names of the revisions that are taken. */
  taken: readonly string[]
  onDone: () => void
}

export function LimitChange({ sheet, what, taken, onDone }: LimitChangeProps) {
  const writeRegister = useWriteRegister()
  const person = useMeasures()
  const sourceOf = useSourceOf()
  const own = sheet.limits[what]
  const practice = boundsFor(what, sheet.kind)
  const [drafts, setDrafts] = useState(() => draftsOf(own ?? practice))
  const [source, setSource] = useState(() => sourceDraftOf(sheet))
  const [tried, setTried] = useState(false)
  const { kind } = benchLimits[what]
  const measure = finer[kind]?.measure ?? measureFor(kind, person)
  const revision = nextRevision(sheet.revision, taken)
  const from = sourceOf(source)
  const next = from && { ...sheet, revision, limits: { ...sheet.limits, [what]: limitOf(drafts, from) } }
  const check = next && checkSheet(next)
  const refused = check && !check.ok ? check.errors : []
  const keep = async () => {
    setTried(true)
    if (!next || refused.length > 0) return
    await writeRegister('sheets', next)
    onDone()
  }
  const takeAway = async () => {
    const { [what]: _gone, ...limits } = sheet.limits
    await writeRegister('sheets', { ...sheet, revision, limits })
    onDone()
  }
  // Only the sides that such a measurement has, and those that the sheet has already.
  const sides = boundSides.filter((side) => practice?.[side] !== undefined || own?.[side] !== undefined)
  return (
    <form
      className="value-change"
      aria-label={say('sheet.change.of', { what: say(`measure.${what}`) })}
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <b className="what">{say(`measure.${what}`)}</b>
      <div className="fields-in-line">
        {sides.map((side) => (
          <QuantityInput
            key={side}
            label={say(`sheet.limit.${side}`)}
            kind={kind}
            {...(measure ? { measure } : {})}
            digits={digitsOf(drafts[side], measure)}
            value={drafts[side]}
            onChange={(value) => setDrafts({ ...drafts, [side]: value })}
          />
        ))}
      </div>
      <SourceForm draft={source} onChange={setSource} unnamed={tried && !from} makersOnly />
      <div role="alert">
        {tried &&
          refused.map(({ field, came, allowed, next: act }) => (
            <p key={field} className="refusal">
              {say('sheet.change.refused', { field, came, allowed, next: act })}
            </p>
          ))}
      </div>
      <div className="acts">
        <Button kind="second" size="row" onPress={onDone}>
          {say('page.cancel')}
        </Button>
        {own && (
          <Button kind="second" size="row" onPress={() => void takeAway()}>
            {say('sheet.limit.take-away')}
          </Button>
        )}
        <Button kind="second" size="row" type="submit">
          {say('sheet.change.keep', { revision })}
        </Button>
      </div>
    </form>
  )
}
