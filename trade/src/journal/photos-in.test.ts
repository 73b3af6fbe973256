import { expect, it } from 'vitest'
import { photosIn } from './photos-in.ts'

it('names the photos of a part and of a note, and of one older than the field none', () => {
  const [text, photo] = ['a'.repeat(64), 'b'.repeat(64)]
  expect(photosIn({ kind: 'noted', body: { text, photos: [photo] } })).toEqual([photo])
  expect(photosIn({ kind: 'noted', body: { text } })).toEqual([])
  expect(photosIn({ kind: 'chassis-checked', body: { part: 'crown', verdict: 'condemned', found: text } })).toEqual([])
  expect(photosIn({ kind: 'ready', body: { minutes: 3 } })).toEqual([])
})
