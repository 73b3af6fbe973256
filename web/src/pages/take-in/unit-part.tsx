/** Which unit: by the code on its label, by name, or a new one. */
import { say, type Unit } from '@legwork/trade'
import { useState } from 'react'
import { LabelScan } from '../../labels/label-scan.tsx'
import { unitInCode, unitOfLabel } from '../../labels/unit-in-code.ts'
import { useRegisters } from '../../offline/hooks.tsx'
import { Button } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { Row, SideHead } from '../../ui/ledger.tsx'
import { NewUnitPart } from './new-unit-part.tsx'
import type { NewUnit } from './take-in-draft.ts'

/** As many as can be looked through at a glance. */
const most = 8

function useFound(find: string): readonly Unit[] {
  const { units, riders } = useRegisters()
  const words = find.trim().toLowerCase()
  if (words === '') return []
  const scanned = unitInCode(words, units)
  if (scanned) return [scanned]
  return units
    .filter((unit) => {
      const rider = riders.find((one) => one.id === unit.rider)
      return `${unit.label} ${unit.description} ${unit.serial ?? ''} ${rider?.name ?? ''}`.toLowerCase().includes(words)
    })
    .slice(0, most)
}

interface FindUnitProps {
  chosen: Unit | null
  /** The rider's own, offered before a word is typed. */
  suggested: readonly Unit[]
  onPick: (unit: Unit) => void
}

function FindUnit({ chosen, suggested, onPick }: FindUnitProps) {
  const [find, setFind] = useState('')
  const { units, riders } = useRegisters()
  const searched = useFound(find)
  const found = find.trim() === '' ? suggested : searched
  const shown = chosen && !found.includes(chosen) ? [chosen, ...found] : found
  return (
    <>
      <TextField
        label={say('take-in.find')}
        hint={say('take-in.find.note')}
        value={find}
        onChange={(text) => {
          setFind(text)
          // A scanner types the whole code at once; a whole label names its unit too.
          const named = unitInCode(text, units) ?? unitOfLabel(text, units)
          if (named) onPick(named)
        }}
      />
      <LabelScan
        onUnit={(unit) => {
          setFind(unit.label)
          onPick(unit)
        }}
      />
      {shown.map((unit) => (
        <Row
          key={unit.id}
          onPress={() => onPick(unit)}
          chosen={unit === chosen}
          name={say('take-in.pick', { label: unit.label })}
        >
          <span translate="no">
            <b>{unit.label}</b> {unit.description}{' '}
            <small className="book">{riders.find((one) => one.id === unit.rider)?.name}</small>
          </span>
        </Row>
      ))}
      {find.trim() !== '' && found.length === 0 && <p className="book">{say('take-in.none-found')}</p>}
    </>
  )
}

interface UnitPartProps extends FindUnitProps {
  /** Null while a known one is looked for. */
  made: NewUnit | null
  onMade: (made: NewUnit) => void
  onNew: (isNew: boolean) => void
}

export function UnitPart({ made, onMade, onNew, ...find }: UnitPartProps) {
  return (
    <SideHead place="above" title={say('take-in.unit')}>
      {made ? <NewUnitPart made={made} onChange={onMade} /> : <FindUnit {...find} />}
      <Button kind="second" size="row" onPress={() => onNew(made === null)}>
        {say(made ? 'take-in.known-unit' : 'take-in.new-unit')}
      </Button>
    </SideHead>
  )
}
