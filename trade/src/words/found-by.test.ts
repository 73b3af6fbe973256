import { expect, it } from 'vitest'
import { beginsIn, wordsOf } from './found-by.ts'

it('finds by beginnings of words, without regard to accents and order', () => {
  expect(wordsOf('Çağrı Şahin, U08: coil fork, coil')).toEqual(['cagri', 'sahin', 'u08', 'coil', 'fork'])
  expect(beginsIn('sah cag', 'Çağrı Şahin')).toBe(true)
  expect(beginsIn('ŞAH', 'Sahin')).toBe(true)
  expect(beginsIn('ahin', 'Sahin')).toBe(false)
  // Every word must begin one.
  expect(beginsIn('coil shock', '35 mm coil fork')).toBe(false)
  expect(beginsIn('  ', 'anything')).toBe(false)
})
