/** Filling in what the sheet lacks, right where it is asked: the value, and the document that says it. */
import { type Sheet, type Source, say, sayMessage, usualBeside, usualWarning } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { TextField } from '../../ui/field.tsx'
import { useJobView } from './job-view.tsx'
import { ReadingField } from './readings.tsx'
import { type FieldValue, nextRevision, type SheetField } from './sheet-fields.ts'

interface Draft {
  [field: string]: FieldValue | null
}

function FillField({
  field,
  value,
  onChange,
}: {
  field: SheetField
  value: FieldValue | null
  onChange: (value: FieldValue | null) => void
}) {
  const { usual, measure } = field
  const label = sayMessage(field.label)
  if (measure === null)
    return (
      <TextField
        label={label}
        value={value && 'text' in value ? value.text : ''}
        onChange={(text) => onChange(text.trim() ? { text } : null)}
      />
    )
  return (
    <ReadingField
      label={label}
      measure={measure}
      value={value && 'number' in value ? value.number : null}
      onChange={(number) => onChange(number === null ? null : { number })}
      {...(usual
        ? {
            suggestion: sayMessage(usualBeside(usual)),
            judge: (number: number) => {
              const warning = usualWarning(number, usual)
              return warning ? sayMessage(warning) : null
            },
          }
        : {})}
    />
  )
}

/** Writes one new revision with everything that was filled in. */
export function SheetFillIn({ sheet, fields }: { sheet: Sheet; fields: readonly SheetField[] }) {
  const { writeSheet, hands } = useJobView()
  const [draft, setDraft] = useState<Draft>({})
  const [kind, setKind] = useState<'makers-sheet' | 'measured-here'>('makers-sheet')
  const [document, setDocument] = useState('')
  const [revision, setRevision] = useState(sheet.revision)
  const [page, setPage] = useState('')
  const [tried, setTried] = useState(false)
  const measured = kind === 'measured-here'
  const unnamed = !measured && document.trim() === ''
  const keep = async () => {
    setTried(true)
    if (unnamed) return
    const source: Source = {
      kind,
      document: measured ? null : document.trim(),
      revision: measured ? null : revision.trim() || null,
      page: measured ? null : page.trim() || null,
      person: measured ? hands.id : null,
      at: measured ? new Date().toISOString() : null,
      instrument: null,
    }
    const filled = fields.reduce((to, field) => {
      const value = draft[field.id]
      return value ? field.put(to, value, source) : to
    }, sheet)
    if (filled !== sheet) await writeSheet({ ...filled, revision: nextRevision(sheet.revision) })
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
      <Choice
        label={say('agree.fill-in.source')}
        options={(['makers-sheet', 'measured-here'] as const).map((value) => ({
          value,
          label: say(`source.${value}`),
        }))}
        value={kind}
        onChange={setKind}
      />
      {!measured && (
        <div className="fields-in-line">
          <TextField
            label={say('agree.fill-in.document')}
            value={document}
            onChange={setDocument}
            refusal={tried && unnamed ? say('agree.fill-in.no-document') : undefined}
          />
          <TextField label={say('agree.fill-in.revision')} value={revision} onChange={setRevision} />
          <TextField label={say('agree.fill-in.page')} value={page} onChange={setPage} />
        </div>
      )}
      <div className="fill-in-fields">
        {fields.map((field) => (
          <FillField
            key={field.id}
            field={field}
            value={draft[field.id] ?? null}
            onChange={(value) => setDraft((was) => ({ ...was, [field.id]: value }))}
          />
        ))}
      </div>
      <Button kind="second" type="submit">
        {say('agree.fill-in.act')}
      </Button>
    </form>
  )
}
