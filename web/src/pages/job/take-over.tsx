/** Another one's job: who has it in hands, and what taking it over means. */
import { say } from '@legwork/trade'
import { Button } from '../../ui/button.tsx'
import { Dialog } from '../../ui/dialog.tsx'
import { type JobView, useJobView, useWriting } from './job-view.tsx'
import { Refused } from './refused.tsx'

/** Whose name stands on it: null where it is in the hands that look, in nobody's, or already closed. */
export function holderOf({ state, hands, people }: JobView): string | null {
  if (!state.hands || state.hands === hands.id || state.handedOver || state.carriedOver) return null
  return people.find((one) => one.id === state.hands)?.name ?? '–'
}

interface TakeOverProps {
  name: string
  isOpen: boolean
  onClose: () => void
}

/** A line above the page where it is narrow; else a leaf over it, opened from the title block. */
export function TakeOver({ name, isOpen, onClose }: TakeOverProps) {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const says = <p className="book">{say('take-over.says', { name })}</p>
  const take = async () => {
    if (await write('taken-over', { from: state.hands })) onClose()
  }
  const act = (
    <Button kind={isOpen ? 'main' : 'second'} size="row" onPress={() => void take()}>
      {say('take-over.act')}
    </Button>
  )
  return (
    <>
      <div className="take-over">
        {says}
        {act}
        <Refused refusal={refusal} />
      </div>
      <Dialog title={say('take-over.act')} isOpen={isOpen} onClose={onClose} actions={act}>
        {says}
        <Refused refusal={refusal} />
      </Dialog>
    </>
  )
}
