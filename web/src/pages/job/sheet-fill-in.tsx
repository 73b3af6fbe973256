/** Filling in what the sheet lacks, right where it is asked: the value, and the document that says it. */
import { nextRevision, type Sheet, type SheetPlace, say } from '@legwork/trade'
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
  const keep = async () => {
    setTried(true)
    if (!from || unsure.length > 0 || filled.length === 0) return
    const next = filled.reduce((to, place) => place.put(to, draftOf(place).value ?? '', from), sheet)
    await writeSheet({ ...next, revision: nextRevision(sheet.revision) })
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
      <p className="refusal" role="alert">
        {tried && unsure.length > 0 && say('sheet.change.not-sure')}
      </p>
      <Button kind="second" type="submit">
        {say('agree.fill-in.act')}
      </Button>
    </form>
  )
}
