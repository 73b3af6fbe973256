/** The largest pressure, as printed on the unit: asked before the first filling where the sheet names none. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { ReadingField } from '../readings.tsx'
import { Refused } from '../refused.tsx'

export function MaximumOnUnit() {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const [value, setValue] = useState<number | null>(null)
  if (state.next.item !== 'maximum-pressure') return null
  const put = () => {
    if (value === null) return
    const reading = { value, measure: 'Pa', instrument: null, how: null } as const
    void write('measured', { what: 'maximum-pressure', leg: null, phase: 'during', reading })
  }
  return (
    <form
      className="keep-line"
      onSubmit={(event) => {
        event.preventDefault()
        put()
      }}
    >
      <ReadingField
        label={say('work.maximum')}
        hint={say('work.maximum.note')}
        measure="Pa"
        value={value}
        onChange={setValue}
      />
      <Button kind="second" type="submit">
        {say('work.maximum.act')}
      </Button>
      <Refused refusal={refusal} />
    </form>
  )
}
