/** One sheet: every value with its source, its limits, its revisions; each value can be changed. */
import { type Id, type PlaceGroup, type Sheet, say, sheetPlaces, writeSheetFile } from '@legwork/trade'
import { useState } from 'react'
import { SheetCutaway } from '../../cutaway/sheet-cutaway.tsx'
import { useFigureWorld } from '../../figures/world.tsx'
import { useRegisters } from '../../offline/hooks.tsx'
import { saveFile } from '../../offline/save-file.ts'
import { Button } from '../../ui/button.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { LimitLines } from './limit-lines.tsx'
import { changedFrom, useRevisions } from './revisions.ts'
import { ValueChange } from './value-change.tsx'
import { ValueLine } from './value-line.tsx'
import './sheets.css'

const groups: readonly PlaceGroup[] = ['chassis', 'spring', 'left', 'right', 'adjusters']

interface ValuesProps {
  sheet: Sheet
  /** Null for an older revision: it is read, not changed. */
  taken: readonly string[] | null
}

function Values({ sheet, taken }: ValuesProps) {
  const [changing, setChanging] = useState<string | null>(null)
  const places = sheetPlaces(sheet)
  return groups.map((group) => {
    const own = places.filter((place) => place.group === group)
    if (own.length === 0) return null
    return (
      <SideHead key={group} place="above" title={say(`sheet.group.${group}`)}>
        {own.map((place) =>
          taken && changing === place.path ? (
            <ValueChange key={place.path} sheet={sheet} place={place} taken={taken} onDone={() => setChanging(null)} />
          ) : (
            <ValueLine key={place.path} place={place} onChange={taken ? () => setChanging(place.path) : null} />
          ),
        )}
      </SideHead>
    )
  })
}

interface RevisionsProps {
  revisions: readonly Sheet[]
  shown: Sheet
  onPick: (revision: string) => void
}

function Revisions({ revisions, shown, onPick }: RevisionsProps) {
  const says = (sheet: Sheet, before: Sheet | undefined): string => {
    if (!before) return say('sheet.revision.first')
    const changed = changedFrom(before, sheet)
    return changed.length > 0 ? say('sheet.revision.changed', { what: changed.join(', ') }) : say('sheet.revision.same')
  }
  return (
    <SideHead place="above" title={say('sheet.revisions')} note={say('sheet.revisions.note')}>
      {revisions
        .map((sheet, index) => (
          <Row
            key={sheet.revision}
            className="list-row"
            chosen={sheet.revision === shown.revision}
            name={say('sheet.revision.pick', { revision: sheet.revision })}
            onPress={() => onPick(sheet.revision)}
          >
            <b translate="no">{sheet.revision}</b>
            <span className="book">{says(sheet, revisions[index - 1])}</span>
            {sheet === revisions.at(-1) && <span>{say('sheet.revision.newest')}</span>}
          </Row>
        ))
        .reverse()}
    </SideHead>
  )
}

function Units({ id }: { id: Id }) {
  const units = useRegisters().units.filter((unit) => unit.sheet === id)
  if (units.length === 0) return null
  return (
    <SideHead place="above" title={say('sheet.units')}>
      {units.map((unit) => (
        <Row key={unit.id} href={`/units/${unit.id}`} className="list-row">
          <b translate="no">{unit.label}</b>
          <span translate="no">{unit.description}</span>
        </Row>
      ))}
    </SideHead>
  )
}

export function SheetPage({ id }: { id: Id }) {
  const revisions = useRevisions(id)
  const { nameOf } = useFigureWorld()
  const [picked, setPicked] = useState<string | null>(null)
  const newest = revisions.at(-1)
  const shown = revisions.find(({ revision }) => revision === picked) ?? newest
  if (!shown || !newest)
    return (
      <ShopFrame place="sheets" title={say('place.sheets')}>
        <p className="empty">{say('sheet.not-here')}</p>
      </ShopFrame>
    )
  const file = `${shown.name} ${shown.revision}.json`.replaceAll(/[^\p{L}\p{N}.-]+/gu, '-')
  const old = shown !== newest
  return (
    <ShopFrame
      place="sheets"
      title={shown.name}
      actions={
        <Button
          kind="second"
          onPress={() => saveFile(file, writeSheetFile(shown, { person: nameOf, instrument: nameOf }))}
        >
          {say('sheet.save')}
        </Button>
      }
    >
      <h1 translate="no">{shown.name}</h1>
      <p className="sheet-kind">
        {say('sheet.kind', {
          kind: say(`take-in.kind.${shown.kind}`),
          body: say(`take-in.body.${shown.body}`),
          damper: say(`take-in.damper.${shown.damper}`),
        })}
        {', '}
        {say('sheet.revision', { revision: shown.revision })}
      </p>
      {shown.generic && <p className="book generic">{say('sheet.generic')}</p>}
      {old && <p className="book">{say('sheet.old')}</p>}
      <SheetCutaway key={`section ${shown.revision}`} sheet={shown} />
      <Values key={shown.revision} sheet={shown} taken={old ? null : revisions.map(({ revision }) => revision)} />
      <LimitLines
        key={`limits ${shown.revision}`}
        sheet={shown}
        taken={old ? null : revisions.map(({ revision }) => revision)}
      />
      <Revisions revisions={revisions} shown={shown} onPick={setPicked} />
      <Units id={id} />
    </ShopFrame>
  )
}
