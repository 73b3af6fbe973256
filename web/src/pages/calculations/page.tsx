import { calculations, runCalculation } from '@legwork/contract/calculations/index.ts'
import { say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { ShopFrame } from '../shop-frame.tsx'

type Outcome = { output: string } | { refused: readonly string[] }

function run(name: string, text: string): Outcome {
  let input: unknown
  try {
    input = JSON.parse(text)
  } catch {
    return { refused: [say('calc.not-json')] }
  }
  const answer = runCalculation(name, input)
  if (answer.ok) return { output: JSON.stringify(answer.output, null, 1) }
  return {
    refused: answer.errors.map(({ field, came, allowed, next }) => say('calc.refused', { field, came, allowed, next })),
  }
}

/** One calculation, worked out here in the browser: no job and no network needed. */
export function CalculationPage({ name }: { name: string }) {
  const one = calculations[name]
  const [text, setText] = useState(() => JSON.stringify(one?.example ?? {}, null, 1))
  const [outcome, setOutcome] = useState<Outcome | null>(null)
  if (!one)
    return (
      <ShopFrame place="calculations" title={say('calc.title')}>
        <p className="empty">{say('calc.unknown')}</p>
      </ShopFrame>
    )
  return (
    <ShopFrame
      place="calculations"
      title={name}
      actions={
        <Button kind="main" onPress={() => setOutcome(run(name, text))}>
          {say('calc.run')}
        </Button>
      }
    >
      <h1 translate="no">{name}</h1>
      <TextField label={say('calc.input')} hint={say('calc.example')} value={text} onChange={setText} lines={14} />
      <div role="status">
        {outcome &&
          'refused' in outcome &&
          outcome.refused.map((said) => (
            <p key={said} className="refusal">
              {said}
            </p>
          ))}
        {outcome && 'output' in outcome && (
          <>
            <h2>{say('calc.output')}</h2>
            <pre translate="no">{outcome.output}</pre>
          </>
        )}
      </div>
    </ShopFrame>
  )
}
