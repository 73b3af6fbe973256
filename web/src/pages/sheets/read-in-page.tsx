/** Reading a sheet's file in: pick it or paste it, mend what is wrong right there, read it in. */
import { type PlacedProblem, type SheetTakenIn, say, takeInSheetFile } from '@legwork/trade'
import { useRef, useState } from 'react'
import { useRegisters, useStation, useWriteRegister } from '../../offline/hooks.tsx'
import { Button, LinkButton } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { Row } from '../../ui/ledger.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import { ShopFrame } from '../shop-frame.tsx'
import { useAllSheets } from './revisions.ts'
import './sheets.css'

/** What is typed here outlives the page being left and come back to. */
const draftKey = 'legwork.sheet-file'

/** Takes a text in as the book stands on this station. */
function useTakeIn(): (text: string, elsewhere: boolean) => Promise<SheetTakenIn> {
  const sheets = useAllSheets()
  const { people, instruments } = useRegisters()
  const writeRegister = useWriteRegister()
  const { newId } = useStation()
  const idIn =
    (list: readonly { id: string; name: string }[]) =>
    (name: string): string | null =>
      list.find((one) => one.name === name || one.id === name)?.id ?? null
  return async (text, elsewhere) => {
    const names = { person: idIn(people), instrument: idIn(instruments), elsewhere }
    const taken = takeInSheetFile(text, { sheets, names, newId })
    if (taken.ok && taken.became !== 'same') await writeRegister('sheets', taken.sheet)
    return taken
  }
}

function Errors({ errors, onGo }: { errors: readonly PlacedProblem[]; onGo: (error: PlacedProblem) => void }) {
  return (
    <section className="file-errors" role="alert">
      <h2>{say('sheet-file.errors', { n: errors.length })}</h2>
      <ol>
        {errors.map((error) => (
          <li key={`${error.line} ${error.column} ${error.field} ${error.code}`}>
            <Row onPress={() => onGo(error)} className="file-error">
              <b>{say('sheet-file.place', { line: error.line, column: error.column })}</b>
              <span translate="no" className="field-name">
                {error.field}
              </span>
              <span>{say('sheet-file.error', { came: error.came, allowed: error.allowed, next: error.next })}</span>
            </Row>
          </li>
        ))}
      </ol>
    </section>
  )
}

export function ReadInPage() {
  const takeIn = useTakeIn()
  const [text, setText] = useState(() => sessionStorage.getItem(draftKey) ?? '')
  const [elsewhere, setElsewhere] = useState(false)
  const [outcome, setOutcome] = useState<SheetTakenIn | 'nothing' | null>(null)
  const box = useRef<HTMLDivElement>(null)
  const type = (next: string) => {
    setText(next)
    sessionStorage.setItem(draftKey, next)
  }
  const pick = async (file: File | undefined) => {
    if (!file) return
    type(await file.text())
    setOutcome(null)
  }
  const act = async () => {
    if (text.trim() === '') return setOutcome('nothing')
    const taken = await takeIn(text, elsewhere)
    setOutcome(taken)
    if (taken.ok) sessionStorage.removeItem(draftKey)
  }
  /** Marks the line in the text, so that it is mended where it stands. */
  const goTo = ({ line }: PlacedProblem) => {
    const area = box.current?.querySelector('textarea')
    if (!area) return
    const lines = area.value.split('\n')
    const start = lines.slice(0, line - 1).reduce((at, row) => at + row.length + 1, 0)
    area.focus()
    area.setSelectionRange(start, start + (lines[line - 1]?.length ?? 0))
    area.scrollTop = (area.scrollHeight / lines.length) * Math.max(0, line - 4)
  }
  return (
    <ShopFrame
      place="sheets"
      title={say('sheet-file.title')}
      actions={
        <Button kind="main" onPress={() => void act()}>
          {say('sheet-file.act')}
        </Button>
      }
    >
      <h1>{say('sheet-file.title')}</h1>
      <p className="book">{say('sheet-file.note')}</p>
      <div className="file-acts">
        <label className="button second size-row file">
          <span>{say('sheet-file.pick')}</span>
          <input type="file" accept="application/json,.json" onChange={(event) => void pick(event.target.files?.[0])} />
        </label>
      </div>
      {outcome && outcome !== 'nothing' && !outcome.ok && <Errors errors={outcome.errors} onGo={goTo} />}
      <div role="status" className="said">
        {outcome === 'nothing' && <p className="refusal">{say('sheet-file.nothing')}</p>}
        {outcome && outcome !== 'nothing' && outcome.ok && (
          <>
            <p>
              {say(`sheet-file.became.${outcome.became}`, {
                name: outcome.sheet.name,
                revision: outcome.sheet.revision,
              })}
            </p>
            <LinkButton kind="second" size="row" arrow="forward" href={`/sheets/${outcome.sheet.id}`}>
              {say('sheet-file.to-sheet')}
            </LinkButton>
          </>
        )}
      </div>
      <div ref={box} className="file-text">
        <TextField
          label={say('sheet-file.text')}
          hint={say('sheet-file.text.note')}
          value={text}
          onChange={type}
          lines={14}
        />
      </div>
      <TickBox
        label={say('sheet-file.elsewhere')}
        detail={say('sheet-file.elsewhere.note')}
        ticked={elsewhere}
        onTick={setElsewhere}
      />
    </ShopFrame>
  )
}
