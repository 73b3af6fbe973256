import { type ReactNode, useId } from 'react'
import { Link } from 'wouter'
import { ArrowLeft, ArrowRight } from '../marks/arrow-mark.tsx'
import './button.css'

/** `row` 48 px, `main` 64 px at the bottom of a page, `work` 88 px in Work, `way` 112 px on the first page. */
export type ButtonSize = 'row' | 'main' | 'work' | 'way'

interface Look {
  children: ReactNode
  /** One filled button on a page: `main`; everything else is `second`. */
  kind: 'main' | 'second'
  size?: ButtonSize
  arrow?: 'forward' | 'back'
  /** Spoken instead of the text, which must be part of it. */
  name?: string
  className?: string
}

interface ButtonProps extends Look {
  onPress?: () => void
  type?: 'button' | 'submit'
  /** Id of the form it submits, where it stands outside of it. */
  form?: string
}

const classOf = ({ kind, size = 'main', className }: Look) =>
  ['button', kind, `size-${size}`, className].filter(Boolean).join(' ')

function Inside({ children, arrow, size }: Pick<Look, 'children' | 'arrow' | 'size'>) {
  const length = size === 'way' ? 64 : size === 'row' ? 32 : 44
  return (
    <>
      {arrow === 'back' && <ArrowLeft length={length} />}
      <span>{children}</span>
      {arrow === 'forward' && <ArrowRight length={length} />}
    </>
  )
}

/** Says what it does; pressing does it at once. */
export function Button({ onPress, type = 'button', form, ...look }: ButtonProps) {
  return (
    <button type={type} form={form} className={classOf(look)} onClick={onPress} aria-label={look.name}>
      <Inside {...look} />
    </button>
  )
}

/** A button that turns to another page. */
export function LinkButton({ href, download, ...look }: Look & { href: string; download?: string }) {
  const inside = <Inside {...look} />
  return href.startsWith('/api/') ? (
    <a className={classOf(look)} href={href} download={download} aria-label={look.name}>
      {inside}
    </a>
  ) : (
    <Link className={classOf(look)} href={href} aria-label={look.name}>
      {inside}
    </Link>
  )
}

interface ShutButtonProps {
  /** The act that is missing: it stands on the button. */
  act: ReactNode
  /** Why it is shut; spoken with the button. The page shows it in a GateNote. */
  why: string
  size?: ButtonSize
  /** Brings the hand to the missing act. */
  onPress?: () => void
}

/** A way on that is shut: hatched, outlined in ink, carrying the missing act. It stays reachable, so that it can say why. */
export function ShutButton({ act, why, size = 'main', onPress }: ShutButtonProps) {
  const reason = useId()
  return (
    <>
      <button
        type="button"
        className={`button shut size-${size}`}
        aria-disabled="true"
        aria-describedby={reason}
        onClick={onPress}
      >
        <span>{act}</span>
      </button>
      <span id={reason} className="unseen">
        {why}
      </span>
    </>
  )
}
