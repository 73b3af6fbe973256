/** Photos side by side, small; a press shows one large. */
import { type Digest, say } from '@legwork/trade'
import { useState } from 'react'
import { day } from '../figures/moment.ts'
import { useStation } from '../offline/hooks.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { usePhoto } from './use-photo.ts'
import './photo-strip.css'

interface Place {
  digest: Digest
  n: number
  all: number
}

function Picture({ digest, n, all }: Place) {
  const here = usePhoto(digest)
  if (here.state === 'shown') return <img src={here.href} alt={say('photo.alt', { n, all })} />
  if (here.state === 'looking') return <span className="no-picture" />
  return (
    <span className="no-picture book">
      {here.state === 'not-here' ? say('photo.not-here') : say('photo.removed', { day: here.on ? day(here.on) : '–' })}
    </span>
  )
}

/** How one that was taken on this tablet stands. */
function Standing({ digest }: { digest: Digest }) {
  const own = useStation().store.memory.photos.get(digest)
  if (!own) return null
  const kept = own.state === 'sent' ? 'sent' : 'kept'
  return own.state === 'refused' ? (
    <small className="refusal">{say('photo.refused', { why: own.says ?? '–' })}</small>
  ) : (
    <small className={`book ${kept}`}>{say(`photo.${kept}`)}</small>
  )
}

interface PhotoStripProps {
  photos: readonly Digest[]
  /** Leaves one out; only before it is written down. */
  onDrop?: (digest: Digest) => void
  /** Says how each stands: on this tablet or in the shop's book. */
  standing?: boolean
}

export function PhotoStrip({ photos, onDrop, standing = false }: PhotoStripProps) {
  const [large, setLarge] = useState<number | null>(null)
  const all = photos.length
  const shown = large === null ? undefined : photos[large]
  return (
    <>
      <ul className="photo-strip">
        {photos.map((digest, index) => {
          const n = index + 1
          return (
            <li key={digest}>
              <button
                type="button"
                className="thumbnail"
                aria-label={say('photo.look', { n, all })}
                onClick={() => setLarge(index)}
              >
                <Picture digest={digest} n={n} all={all} />
              </button>
              {standing && <Standing digest={digest} />}
              {onDrop && (
                <Button kind="second" size="row" onPress={() => onDrop(digest)}>
                  {say('photo.drop', { n })}
                </Button>
              )}
            </li>
          )
        })}
      </ul>
      {shown && large !== null && (
        <Dialog
          title={say('photo.of', { n: large + 1, all })}
          isOpen
          wide
          onClose={() => setLarge(null)}
          {...(all > 1
            ? {
                actions: (
                  <Button kind="second" arrow="forward" onPress={() => setLarge((large + 1) % all)}>
                    {say('photo.of', { n: ((large + 1) % all) + 1, all })}
                  </Button>
                ),
              }
            : {})}
        >
          <div className="photo-large">
            <Picture key={shown} digest={shown} n={large + 1} all={all} />
          </div>
        </Dialog>
      )}
    </>
  )
}
