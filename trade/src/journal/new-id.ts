/**
 * A UUID version 7: 48 bits of Unix time in milliseconds, then chance, so that ids sort by when they were made.
 *
 * @param at      Unix time [ms], 0 … 2⁴⁸ − 1
 * @param random  at least 10 bytes of good chance
 * @throws RangeError when the time or the bytes do not fit
 * @source RFC 9562, section 5.7
 * @example newId(1645557742000, new Uint8Array([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f])) // '017f22e2-79b0-7cc3-98c4-dc0c0c07398f'
 */
export function newId(at: number, random: Uint8Array): string {
  if (!Number.isInteger(at) || at < 0 || at >= 2 ** 48) throw new RangeError(`at is ${at}; it must be 0 … 2⁴⁸ − 1 ms`)
  if (random.length < 10) throw new RangeError(`random has ${random.length} bytes; 10 are needed`)
  const bytes = new Uint8Array(16)
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(at / 2 ** (8 * (5 - i))) % 256
  bytes.set(random.subarray(0, 10), 6)
  bytes[6] = 0x70 | ((bytes[6] ?? 0) & 0x0f)
  bytes[8] = 0x80 | ((bytes[8] ?? 0) & 0x3f)
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`
}
