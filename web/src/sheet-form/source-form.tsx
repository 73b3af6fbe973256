/** Where a value comes from, as it is typed: the maker's document, or measured here with what. */
import { type Sheet, type Source, say } from '@legwork/trade'
import { useHands, useRegisters, useStation } from '../offline/hooks.tsx'
import { Choice } from '../ui/choice.tsx'
import { Field, TextField } from '../ui/field.tsx'

export interface SourceDraft {
  kind: 'makers-sheet' | 'measured-here'
  document: string
  revision: string
  page: string
  instrument: string
}

/** The document that stands behind most of a sheet is the one that is being read. */
export function sourceDraftOf(sheet: Sheet): SourceDraft {
  const { kind, document, revision } = sheet.stroke.source
  const maker = kind === 'makers-sheet'
  return {
    kind: 'makers-sheet',
    document: (maker ? document : null) ?? '',
    revision: (maker ? revision : null) ?? sheet.revision,
    page: '',
    instrument: '',
  }
}

/** The draft as a source; null where a maker's document has no name yet. */
export function useSourceOf(): (draft: SourceDraft) => Source | null {
  const { person } = useHands()
  const station = useStation()
  return (draft) => {
    const nothing = { document: null, revision: null, page: null, person: null, at: null, instrument: null }
    if (draft.kind === 'measured-here')
      return (
        person && {
          ...nothing,
          kind: 'measured-here',
          person: person.id,
          at: station.now(),
          instrument: draft.instrument || null,
        }
      )
    const document = draft.document.trim()
    if (document === '') return null
    return {
      ...nothing,
      kind: 'makers-sheet',
      document,
      revision: draft.revision.trim() || null,
      page: draft.page.trim() || null,
    }
  }
}

interface SourceFormProps {
  draft: SourceDraft
  onChange: (draft: SourceDraft) => void
  /** It was tried without a document. */
  unnamed: boolean
  /** What nobody can measure: only a document says it. */
  makersOnly?: boolean
}

export function SourceForm({ draft, onChange, unnamed, makersOnly = false }: SourceFormProps) {
  const instruments = useRegisters().instruments.filter(({ putAway }) => !putAway)
  const change = (patch: Partial<SourceDraft>) => onChange({ ...draft, ...patch })
  return (
    <>
      {!makersOnly && (
        <Choice
          label={say('agree.fill-in.source')}
          options={(['makers-sheet', 'measured-here'] as const).map((value) => ({
            value,
            label: say(`source.${value}`),
          }))}
          value={draft.kind}
          onChange={(kind) => change({ kind })}
        />
      )}
      {draft.kind === 'makers-sheet' ? (
        <div className="fields-in-line">
          <TextField
            label={say('agree.fill-in.document')}
            value={draft.document}
            onChange={(document) => change({ document })}
            refusal={unnamed ? say('agree.fill-in.no-document') : undefined}
          />
          <TextField
            label={say('agree.fill-in.revision')}
            value={draft.revision}
            onChange={(revision) => change({ revision })}
          />
          <TextField label={say('agree.fill-in.page')} value={draft.page} onChange={(page) => change({ page })} />
        </div>
      ) : (
        <Field label={say('look.add.with')}>
          {(control) => (
            <select
              {...control}
              value={draft.instrument}
              onChange={(event) => change({ instrument: event.target.value })}
            >
              <option value="">{say('look.add.with.none')}</option>
              {instruments.map((one) => (
                <option key={one.id} value={one.id} translate="no">
                  {one.name}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
    </>
  )
}
