import { say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { GateMark } from '../marks/gate-mark.tsx'
import './gate-note.css'

interface GateNoteProps {
  open: boolean
  /** By what it is shut and what opens it; or what the open way leads to. */
  children: ReactNode
  /** An ISO 3864 sign before it, where the standard means just this. */
  sign?: ReactNode
}

/** A gate, shut or open, in words. */
export function GateNote({ open, children, sign }: GateNoteProps) {
  return (
    <div className="gate-note" role="status">
      {sign}
      <div>
        <p className="state">
          <GateMark open={open} size={30} /> <b>{open ? say('gate.open') : say('gate.blocked')}</b>
        </p>
        <p className="book">{children}</p>
      </div>
    </div>
  )
}
