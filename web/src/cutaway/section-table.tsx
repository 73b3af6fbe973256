/** What the drawing shows, as a table: for whoever can't see it, and for whoever wants the figures. */
import type { ForkParameters } from '@legwork/drawing'
import { say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { QuantityText } from '../figures/quantity-text.tsx'
import { useQuantityWords } from '../figures/quantity-words.ts'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { type SectionRow, sectionRows } from './section-rows.ts'

function partName({ part, count }: SectionRow): string {
  if (part === 'spacers') return say('cutaway.spacers', { n: count ?? 0 })
  if (part === 'bushings') return say('cutaway.bushings')
  return say(`cutaway.${part}`)
}

function Where({ row }: { row: SectionRow }) {
  const text = useQuantityWords()
  const { part, length } = row
  if (part === 'spacers') return say('cutaway.spacers.where')
  if (length === undefined) return null
  const there = text(length, 'length')
  if (part === 'ring') return say('cutaway.ring.at', { stroke: there })
  if (part === 'bushings') return say('cutaway.bushings.apart', { apart: there })
  return say('cutaway.oil.level', { height: there })
}

/** An arrow would need eyes: the word says which way. */
function Force({ row }: { row: SectionRow }) {
  const text = useQuantityWords()
  if (row.force === undefined) return null
  const force = text(Math.abs(row.force), 'force')
  // Below the air outside a chamber works the other way round.
  return (row.part === 'negative') === row.force >= 0
    ? say('cutaway.pulls', { force })
    : say('cutaway.pushes', { force })
}

function Rows({ fork }: { fork: ForkParameters }) {
  const text = useQuantityWords()
  return (
    <table>
      <caption className="book">{say('cutaway.table.caption', { stroke: text(fork.stroke, 'length') })}</caption>
      <thead>
        <tr>
          <th scope="col">{say('cutaway.part')}</th>
          <th scope="col">{say('cutaway.pressure')}</th>
          <th scope="col">{say('cutaway.volume')}</th>
          <th scope="col">{say('cutaway.force')}</th>
        </tr>
      </thead>
      <tbody>
        {sectionRows(fork).map((row) => (
          <tr key={row.part}>
            <th scope="row">
              {partName(row)}
              <small className="book">
                <Where row={row} />
              </small>
            </th>
            <td>{row.pressure !== undefined && <QuantityText value={row.pressure} kind="pressure" />}</td>
            <td>{row.volume !== undefined && <QuantityText value={row.volume} kind="volume" />}</td>
            <td>
              <Force row={row} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Opened by anybody; its rows are made only while it is open. `more` stands under it: the table of a chart. */
export function SectionTable({ fork, more }: { fork: ForkParameters; more?: (() => ReactNode) | undefined }) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <Button kind="second" size="row" onPress={() => setOpen(true)}>
        {say('cutaway.table')}
      </Button>
      {open && (
        <Dialog title={say('cutaway.table.title')} isOpen onClose={() => setOpen(false)}>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone the tables are scrolled sideways, by keys too */}
          <section className="section-tables" aria-label={say('cutaway.table')} tabIndex={0}>
            <Rows fork={fork} />
            <p className="book">{say('cutaway.to-scale')}</p>
            {more?.()}
          </section>
        </Dialog>
      )}
    </>
  )
}
