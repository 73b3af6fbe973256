import { type ReactNode, useEffect, useId, useRef } from 'react'
import { Link, useLocation } from 'wouter'
import { Logo } from '../marks/logo.tsx'
import { type EdgePlace, ThumbEdge } from './thumb-edge.tsx'
import './frame.css'

/** A cell of the title block, as on a drawing. */
export interface BlockCell {
  label: ReactNode
  value: ReactNode
  /** Pressing turns to this page: the value is violet. */
  href?: string
  /** Pressing opens something over this page: violet as well. */
  onPress?: () => void
  /** Takes what room is left. */
  grow?: boolean
  /** `show`: stands in the head of the phone too. */
  phone?: 'show'
  /** Left out where the block is narrower than a tablet laid down, or than a desktop; it is then reached another way. */
  wide?: boolean | 'desktop'
}

export interface TitleBlockProps {
  home: { label: ReactNode; href: string }
  cells: readonly BlockCell[]
}

/** The title block: 56 px on a tablet, the head of 52 px on a phone. */
export function TitleBlock({ home, cells }: TitleBlockProps) {
  return (
    <header className="title-block">
      <Link className="home" href={home.href}>
        <Logo height={18} /> <span>{home.label}</span>
      </Link>
      {cells.map((cell, index) => {
        const inside = (
          <>
            <small>{cell.label}</small>
            <b>{cell.value}</b>
          </>
        )
        const classes = [
          'cell',
          cell.grow && 'grow',
          cell.phone,
          cell.wide && (cell.wide === 'desktop' ? 'roomy' : 'wide'),
        ]
          .filter(Boolean)
          .join(' ')
        /* biome-ignore-start lint/suspicious/noArrayIndexKey: cells of one page keep their places */
        if (cell.href)
          return (
            <Link key={index} className={`${classes} hand`} href={cell.href}>
              {inside}
            </Link>
          )
        if (cell.onPress)
          return (
            <button key={index} type="button" className={`${classes} hand`} onClick={cell.onPress}>
              {inside}
            </button>
          )
        return (
          <div key={index} className={classes}>
            {inside}
          </div>
        )
        /* biome-ignore-end lint/suspicious/noArrayIndexKey: cells of one page keep their places */
      })}
    </header>
  )
}

export interface FrameProps {
  block: TitleBlockProps
  /** Spoken name of the edge, and what it turns to: seven chapters of a job, or the shop's places. */
  edge: { label: string; of: 'chapters' | 'places'; places: readonly EdgePlace[] }
  /** Spoken as the page's name, and the window's title. */
  title: string
  children: ReactNode
  /** The bottom line: actions, the main one last. Fixed at the bottom on a phone. */
  actions?: ReactNode
  className?: string
}

/** A page: title block above, thumb edge at the right, actions on the bottom line. */
export function Frame({ block, edge, title, children, actions, className }: FrameProps) {
  const main = useRef<HTMLElement>(null)
  const [, turnTo] = useLocation()
  const id = useId()
  useEffect(() => {
    document.title = title
    main.current?.focus({ preventScroll: true })
    // Another page begins at its top.
    main.current?.firstElementChild?.scrollTo(0, 0)
  }, [title])
  useEffect(() => {
    // Search from anywhere: with a held key, so that no letter typed by the way opens it (WCAG 2.2, 2.1.4).
    const search = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'k') return
      event.preventDefault()
      turnTo('/search')
    }
    window.addEventListener('keydown', search)
    return () => window.removeEventListener('keydown', search)
  }, [turnTo])
  return (
    <div className={['frame', edge.of, className].filter(Boolean).join(' ')}>
      <TitleBlock {...block} />
      <ThumbEdge {...edge} />
      <main ref={main} tabIndex={-1} id={id} aria-label={title}>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a page that scrolls and has nothing to press is scrolled by keys */}
        <div className="page" tabIndex={0}>
          {children}
        </div>
        {actions && <div className="actions screen-only">{actions}</div>}
      </main>
    </div>
  )
}
