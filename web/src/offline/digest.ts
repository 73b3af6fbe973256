import type { Digest } from '@legwork/trade'

/**
 * The digest an entry names a text by: SHA-256 of its UTF-8 bytes, 64 hexadecimal digits.
 *
 * @source FIPS 180-4
 */
export async function digestOf(text: string): Promise<Digest> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)))
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}
