/** Changing one value of a sheet, in place: the value, its source, one more revision. */
import { checkSheet, nextRevision, type Sheet, type SheetPlace, say, sayMessage } from '@legwork/trade'
import { useState } from 'react'
import { useWriteRegister } from '../../offline/hooks.tsx'
import { isKeepable, type PlaceDraft, PlaceField } from '../../sheet-form/place-field.tsx'
import { SourceForm, sourceDraftOf, useSourceOf } from '../../sheet-form/source-form.tsx'
import { Button } from '../../ui/button.tsx'

interface ValueChangeProps {
  sheet: Sheet
  place: SheetPlace
  /** Names of the revisions that are taken. */
  taken: readonly string[]
  onDone: () => void
}

/** Why it can't be kept as it stands, a sentence each. */
function refusals(place: SheetPlace, draft: PlaceDraft, next: Sheet | null): readonly string[] {
  if (draft.value === null) return [say('sheet.change.no-value')]
  if (!isKeepable(place, draft)) return [say('sheet.change.not-sure')]
  const check = next ? checkSheet(next) : null
  if (!check || check.ok) return []
  return check.errors.map(({ field, came, allowed, next: act }) =>
    say('sheet.change.refused', { field, came, allowed, next: act }),
  )
}

export function ValueChange({ sheet, place, taken, onDone }: ValueChangeProps) {
  const writeRegister = useWriteRegister()
  const sourceOf = useSourceOf()
  const [draft, setDraft] = useState<PlaceDraft>({ value: place.held?.value ?? null, sure: false })
  const [source, setSource] = useState(() => sourceDraftOf(sheet))
  const [tried, setTried] = useState(false)
  const revision = nextRevision(sheet.revision, taken)
  const from = sourceOf(source)
  const next = from && draft.value !== null ? { ...place.put(sheet, draft.value, from), revision } : null
  const refused = refusals(place, draft, next)
  const keep = async () => {
    setTried(true)
    if (!next || refused.length > 0) return
    await writeRegister('sheets', next)
    onDone()
  }
  return (
    <form
      className="value-change"
      aria-label={say('sheet.change.of', { what: sayMessage(place.label) })}
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <PlaceField place={place} draft={draft} onChange={setDraft} measured={source.kind === 'measured-here'} />
      <SourceForm draft={source} onChange={setSource} unnamed={tried && !from} />
      <div role="alert">
        {tried &&
          refused.map((sentence) => (
            <p key={sentence} className="refusal">
              {sentence}
            </p>
          ))}
      </div>
      <div className="acts">
        <Button kind="second" size="row" onPress={onDone}>
          {say('page.cancel')}
        </Button>
        <Button kind="second" size="row" type="submit">
          {say('sheet.change.keep', { revision })}
        </Button>
      </div>
    </form>
  )
}
