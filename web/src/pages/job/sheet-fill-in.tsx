/** Filling in what the sheet lacks, right where it is asked: the value, and the document that says it. */
import { checkSheet, nextRevision, type Sheet, type SheetPlace, say } from '@legwork/trade'
import { useState } from 'react'
import { emptyPlace, isKeepable, type PlaceDraft, PlaceField } from '../../sheet-form/place-field.tsx'
import { SourceForm, sourceDraftOf, useSourceOf } from '../../sheet-form/source-form.tsx'
import { Button } from '../../ui/button.tsx'
import { useJobView } from './job-view.tsx'

/** Writes one new revision with everything that was filled in. */
export function SheetFillIn({ sheet, fields }: { sheet: Sheet; fields: readonly SheetPlace[] }) {
  const { writeSheet } = useJobView()
  const sourceOf = useSourceOf()
  const [drafts, setDrafts] = useState<Readonly<Record<string, PlaceDraft>>>({})
  const [source, setSource] = useState(() => ({ ...sourceDraftOf(sheet), document: '' }))
  const [tried, setTried] = useState(false)
  const draftOf = (place: SheetPlace): PlaceDraft => drafts[place.path] ?? emptyPlace
  const filled = fields.filter((place) => draftOf(place).value !== null)
  const unsure = filled.filter((place) => !isKeepable(place, draftOf(place)))
  const from = sourceOf(source)
  const next = from && {
    ...filled.reduce((to, place) => place.put(to, draftOf(place).value ?? '', from), sheet),
    revision: nextRevision(sheet.revision),
  }
  const check = next && checkSheet(next)
  const refused = check && !check.ok ? check.errors : []
  const keep = async () => {
    setTried(true)
    if (!next || unsure.length > 0 || refused.length > 0 || filled.length === 0) return
    await writeSheet(next)
  }
  return (
    <form
      className="fill-in"
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <h3>{say('agree.fill-in')}</h3>
      <p className="book">{say('agree.fill-in.note')}</p>
      <SourceForm draft={source} onChange={setSource} unnamed={tried && !from} />
      <div className="fill-in-fields">
        {fields.map((place) => (
          <PlaceField
            key={place.path}
            place={place}
            draft={draftOf(place)}
            measured={source.kind === 'measured-here'}
            onChange={(draft) => setDrafts((was) => ({ ...was, [place.path]: draft }))}
          />
        ))}
      </div>
      <div role="alert">
        {tried && unsure.length > 0 && <p className="refusal">{say('sheet.change.not-sure')}</p>}
        {tried &&
          refused.map(({ field, came, allowed, next: act }) => (
            <p key={field} className="refusal">
              {say('sheet.change.refused', { field, came, allowed, next: act })}
            </p>
          ))}
      </div>
      <Button kind="second" type="submit">
        {say('agree.fill-in.act')}
      </Button>
    </form>
  )
}
