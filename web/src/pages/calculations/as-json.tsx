/** The question and its answer as the command line and the API know them. */
import { say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { CopyButton } from './copy-button.tsx'
import { isRecord } from './draft.ts'

interface AsJsonProps {
  input: unknown
  output: Record<string, unknown> | null
  onTake: (input: Record<string, unknown>) => void
}

function parsed(text: string): Record<string, unknown> | null {
  try {
    const value: unknown = JSON.parse(text)
    return isRecord(value) ? value : null
  } catch {
    return null
  }
}

export function AsJson({ input, output, onTake }: AsJsonProps) {
  const [typed, setTyped] = useState<string | null>(null)
  const [wrong, setWrong] = useState(false)
  const text = typed ?? JSON.stringify(input, null, 1)
  function take(): void {
    const value = parsed(text)
    setWrong(value === null)
    if (value === null) return
    setTyped(null)
    onTake(value)
  }
  return (
    <details className="calc-json">
      <summary>{say('calc.json')}</summary>
      <TextField
        label={say('calc.input')}
        hint={say('calc.json.about')}
        refusal={wrong ? say('calc.json.wrong') : undefined}
        value={text}
        onChange={setTyped}
        lines={10}
      />
      <div className="acts">
        <Button kind="second" size="row" onPress={take}>
          {say('calc.json.take')}
        </Button>
        <CopyButton text={text} label={say('calc.json.copy')} done={say('calc.copied')} />
      </div>
      {output && (
        <>
          <h3>{say('calc.json.out')}</h3>
          <pre translate="no">{JSON.stringify(output, null, 1)}</pre>
        </>
      )}
    </details>
  )
}
