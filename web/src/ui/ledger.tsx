import type { ReactNode } from 'react'
import { Link } from 'wouter'
import './ledger.css'

interface SideHeadProps {
  title: ReactNode
  /** Below the title, in book type. */
  note?: ReactNode
  children: ReactNode
  /** `above`: the title over the rows, full width, as on the phone. */
  place?: 'side' | 'above'
  className?: string
}

/** A ruled section: its head at the side, its rows beside it. */
export function SideHead({ title, note, children, place = 'side', className }: SideHeadProps) {
  return (
    <section className={['side-head', place, className].filter(Boolean).join(' ')}>
      <div className="head">
        <h2>{title}</h2>
        {note && <p className="book">{note}</p>}
      </div>
      <div className="rows">{children}</div>
    </section>
  )
}

interface RowProps {
  children: ReactNode
  /** The whole row turns to this page. */
  href?: string
  onPress?: () => void
  /** Spoken name where the row's own text is not enough. */
  name?: string
  /** Chosen: washed in violet. */
  chosen?: boolean
  className?: string
}

/** A ledger line of 56 px or more. No card: a rule below it. */
export function Row({ children, href, onPress, name, chosen, className }: RowProps) {
  const classes = ['row', chosen && 'chosen', className].filter(Boolean).join(' ')
  if (href)
    return (
      <Link href={href} className={classes} aria-label={name} aria-current={chosen ? 'true' : undefined}>
        {children}
      </Link>
    )
  if (onPress)
    return (
      <button type="button" className={classes} aria-label={name} aria-pressed={chosen} onClick={onPress}>
        {children}
      </button>
    )
  return <div className={classes}>{children}</div>
}

/** A line of name and value, as in a ruled table. */
export function ValueRow({ name, note, children }: { name: ReactNode; note?: ReactNode; children: ReactNode }) {
  return (
    <div className="row value-row">
      <div className="name">
        {name}
        {note && <p className="book">{note}</p>}
      </div>
      <div className="value">{children}</div>
    </div>
  )
}
