/** A photo as it may be kept: a JPEG of modest size that says nothing about where or with what it was taken. */
import type { FieldError } from './errors.ts'

/** Long edge at most [px]. */
export const photoEdge = 2000
/** At most [byte]. */
export const photoBytes = 4 * 1024 * 1024

export interface JpegMarkers {
  width: number
  height: number
  /** Markers of segments that describe instead of picture: APP1 … APP15 but colour profile and Adobe's flag, comments. */
  telling: readonly string[]
  /** Whether anything follows the end of the picture: some cameras put a film or a second picture there. */
  trailing: boolean
}

const nameOf = (marker: number): string => (marker === 0xfe ? 'COM' : `APP${marker - 0xe0}`)
/** JFIF, a colour profile, Adobe's flag: needed to show the colours as they are; none of them holds a place. */
function isHarmless(marker: number, content: Uint8Array): boolean {
  if (marker === 0xe0 || marker === 0xee) return true
  return marker === 0xe2 && String.fromCharCode(...content.slice(0, 11)) === 'ICC_PROFILE'
}

/**
 * The segments of a JPEG up to its end, or null where it is none or breaks off.
 *
 * @source ITU-T T.81 (09/92), B.1.1 markers and B.2 syntax
 */
export function jpegMarkers(bytes: Uint8Array): JpegMarkers | null {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return null
  const word = (at: number): number => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0)
  const telling: string[] = []
  let size: { width: number; height: number } | null = null
  let at = 2
  while (at < bytes.length) {
    if (bytes[at] !== 0xff) return null
    const marker = bytes[at + 1] ?? 0
    if (marker === 0xff) {
      at += 1
      continue
    }
    if (marker === 0xd9) return size && { ...size, telling, trailing: at + 2 < bytes.length }
    const length = word(at + 2)
    if (length < 2 || at + 2 + length > bytes.length) return null
    const describes = (marker >= 0xe0 && marker <= 0xef) || marker === 0xfe
    if (describes && !isHarmless(marker, bytes.subarray(at + 4, at + 2 + length))) telling.push(nameOf(marker))
    // A frame header: every SOF but DHT, JPG and DAC, which share its range.
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker))
      size = { height: word(at + 5), width: word(at + 7) }
    at += 2 + length
    if (marker === 0xda) at = afterScan(bytes, at)
  }
  return null
}

/** Where the next marker stands behind entropy-coded data: 0xFF00 is data, restarts belong to it. */
function afterScan(bytes: Uint8Array, from: number): number {
  let at = from
  while (at < bytes.length) {
    const next = bytes[at + 1] ?? 0
    if (bytes[at] === 0xff && next !== 0 && !(next >= 0xd0 && next <= 0xd7)) return at
    at += 1
  }
  return at
}

function wrong(code: PhotoCode, came: string, allowed: string, next: string): FieldError {
  return { field: 'photo', code, came, allowed, next }
}

/** Every code that a photo is refused with; `docs/errors.md` says the same. */
export const photoCodes = {
  'photo.too-large': 'More than 4 MB, or more than 2,000 px along the long edge.',
  'photo.not-jpeg': 'Bytes that are no whole JPEG picture, whatever they call themselves.',
  'photo.tells-more': 'A picture with more in it than the picture: place, camera, comment, data behind its end.',
  'photo.digest': 'Bytes of another SHA-256 digest than the address names.',
  'photo.unnamed': 'A photo that no entry names: its entry is delivered first.',
  'photo.unknown': 'A photo that is not here, or not yet.',
  'photo.removed': 'A photo that was removed with its rider.',
} as const
export type PhotoCode = keyof typeof photoCodes

/** What is wrong with bytes as a photo, or null. The digest is checked where it can be worked out. */
export function photoTrouble(bytes: Uint8Array): FieldError | null {
  const smaller = `at most ${photoBytes / 1024 / 1024} MB and ${photoEdge} px along the long edge`
  if (bytes.length > photoBytes)
    return wrong(
      'photo.too-large',
      `${(bytes.length / 1024 / 1024).toFixed(1)} MB`,
      smaller,
      'Make it smaller before sending.',
    )
  const found = jpegMarkers(bytes)
  if (!found) return wrong('photo.not-jpeg', describe(bytes), 'a whole JPEG picture', 'Re-encode it as JPEG.')
  if (Math.max(found.width, found.height) > photoEdge)
    return wrong('photo.too-large', `${found.width} × ${found.height} px`, smaller, 'Make it smaller before sending.')
  if (found.telling.length > 0 || found.trailing)
    return wrong(
      'photo.tells-more',
      [...new Set(found.telling), ...(found.trailing ? ['data after the end'] : [])].join(', '),
      'the picture alone: no place, time, camera or comment in it',
      'Re-encode the picture; that leaves everything else out.',
    )
  return null
}

function describe(bytes: Uint8Array): string {
  if (bytes.length === 0) return 'nothing'
  const first = [...bytes.slice(0, 4)].map((byte) => byte.toString(16).padStart(2, '0')).join(' ')
  return `${bytes.length} bytes beginning ${first}`
}
