import { expect, it } from 'vitest'
import { newId } from './new-id.ts'

// RFC 9562, appendix A.6, example of a UUIDv7: time 0x017F22E279B0, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F
it('makes the UUIDv7 of RFC 9562 appendix A.6', () => {
  const random = new Uint8Array([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f])
  expect(newId(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f')
})

it('sorts by time', () => {
  const random = new Uint8Array(10).fill(0xff)
  expect(newId(1000, random) < newId(1001, new Uint8Array(10))).toBe(true)
})

it('refuses a time that does not fit', () => {
  expect(() => newId(-1, new Uint8Array(10))).toThrow('at is -1')
  expect(() => newId(0, new Uint8Array(9))).toThrow('random has 9 bytes')
})
