import type { Digest } from '@legwork/trade'

/**
 * The digest an entry names a text by: SHA-256 of its UTF-8 bytes, 64 hexadecimal digits.
 *
 * @source FIPS 180-4
 */
export async function digestOf(text: string): Promise<Digest> {
  return digestOfBytes(new TextEncoder().encode(text))
}

/** The digest an entry names a photo by: SHA-256 of its bytes. */
export async function digestOfBytes(of: BufferSource): Promise<Digest> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', of))
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}
