import type { ReactNode } from 'react'

interface IconProps {
  size?: number
}

/** 24 grid, round pen 2; never spoken, because a word always stands beside it. */
function Icon({ size = 24, children }: IconProps & { children: ReactNode }) {
  return (
    <svg
      viewBox="0 0 24 24"
      width={size}
      height={size}
      aria-hidden="true"
      focusable="false"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
      strokeLinecap="round"
      strokeLinejoin="round"
    >
      {children}
    </svg>
  )
}

export function TickIcon({ size = 24 }: IconProps) {
  return (
    <Icon size={size}>
      <path d="M4 13l5.5 6L20.5 4.500" strokeWidth="3" />
    </Icon>
  )
}

export function PlusIcon({ size = 24 }: IconProps) {
  return (
    <Icon size={size}>
      <path d="M5 12h14M12 5v14" strokeWidth="2.8" />
    </Icon>
  )
}

export function MinusIcon({ size = 24 }: IconProps) {
  return (
    <Icon size={size}>
      <path d="M5 12h14" strokeWidth="2.8" />
    </Icon>
  )
}

/** A box with a lens, seen from the front. */
export function CameraIcon({ size = 24 }: IconProps) {
  return (
    <Icon size={size}>
      <path d="M2.5 7h5l1.8-3h5.4l1.8 3h5v13h-19z" />
      <circle cx="12" cy="13" r="4.200" />
    </Icon>
  )
}

/** The copying pencil, point down left. */
export function PencilIcon({ size = 24 }: IconProps) {
  return (
    <Icon size={size}>
      <path d="M3 21l1.3-5.2L16.8 3.3l3.9 3.9L8.2 19.7zM13.8 6.3l3.9 3.900" />
      <path d="M3 21l.8-3 2.2 2.2z" fill="currentColor" />
    </Icon>
  )
}
