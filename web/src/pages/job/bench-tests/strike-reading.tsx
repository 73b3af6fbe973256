/** A reading that can be struck where it stands: the book keeps it, with the reason. */
import { type MeasuredEntry, say } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'

const reasons = ['misread', 'not-held', 'slipped'] as const

export function StrikeReading({ of }: { of: MeasuredEntry }) {
  const { keepText } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const [open, setOpen] = useState(false)
  const film = of.release?.film
  const reading = film ? say('return.film', { pictures: film.pictures }) : text(of.reading.value, of.reading.measure)
  const strike = async (why: (typeof reasons)[number]) => {
    const reason = await keepText(say(`bench-test.strike.${why}`))
    if (await write('struck', { entry: of.entry, reason })) setOpen(false)
  }
  return (
    <>
      <button
        type="button"
        className="reading hand"
        aria-haspopup="dialog"
        aria-label={say('bench-test.strike', { reading })}
        translate="no"
        onClick={() => setOpen(true)}
      >
        {reading}
      </button>
      {open && (
        <Dialog title={say('bench-test.strike', { reading })} isOpen onClose={() => setOpen(false)}>
          <p>{say('bench-test.strike.why')}</p>
          <div className="acts">
            {reasons.map((why) => (
              <Button key={why} kind="second" onPress={() => void strike(why)}>
                {say(`bench-test.strike.${why}`)}
              </Button>
            ))}
          </div>
          <Refused refusal={refusal} />
        </Dialog>
      )}
    </>
  )
}
