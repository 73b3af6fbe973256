import { say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { Button } from '../../ui/button.tsx'

interface CopyButtonProps {
  text: string
  label: ReactNode
  /** Said once it is copied. */
  done: ReactNode
}

/** Puts a text on the clipboard and says whether it is there. */
export function CopyButton({ text, label, done }: CopyButtonProps) {
  const [said, setSaid] = useState<'done' | 'failed' | null>(null)
  function copy(): void {
    const { clipboard }: { clipboard?: Clipboard } = navigator
    const copied = clipboard ? clipboard.writeText(text) : Promise.reject(new Error('no clipboard here'))
    copied.then(
      () => setSaid('done'),
      () => setSaid('failed'),
    )
  }
  return (
    <span className="calc-copy">
      <Button kind="second" size="row" onPress={copy}>
        {label}
      </Button>
      <span className="book" role="status">
        {said === 'done' && done}
        {said === 'failed' && say('calc.link.failed')}
      </span>
    </span>
  )
}
