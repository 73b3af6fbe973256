/** A decision with its reason, which stays in the book. */
import { type Digest, say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { useJobView } from './job-view.tsx'

interface ReasonFormProps {
  label: string
  /** The acts it may end in; each is written with the reason. */
  acts: readonly { name: string; act: (reason: Digest) => Promise<boolean> }[]
  onCancel?: () => void
  hint?: string
}

export function ReasonForm({ label, acts, onCancel, hint }: ReasonFormProps) {
  const { keepText } = useJobView()
  const [reason, setReason] = useState('')
  const [tried, setTried] = useState(false)
  const empty = reason.trim() === ''
  const run = async (act: (reason: Digest) => Promise<boolean>) => {
    setTried(true)
    if (!empty && (await act(await keepText(reason.trim())))) setReason('')
  }
  return (
    <div className="reason-form">
      <TextField
        label={label}
        hint={hint}
        value={reason}
        onChange={setReason}
        refusal={tried && empty ? say('page.reason-missing') : undefined}
      />
      <div className="acts">
        {onCancel && (
          <Button kind="second" size="row" onPress={onCancel}>
            {say('page.cancel')}
          </Button>
        )}
        {acts.map(({ name, act }) => (
          <Button key={name} kind="second" size="row" onPress={() => void run(act)}>
            {name}
          </Button>
        ))}
      </div>
    </div>
  )
}
