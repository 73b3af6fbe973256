import { expect, it } from 'vitest'
import { liftBody, newestVersion, type UpCaster } from './entry-versions.ts'

// Two changes a kind might see: a field renamed, then one added.
const casters: UpCaster[] = [
  { kind: 'noted', from: 1, lift: (body) => ({ words: Reflect.get(Object(body), 'text') }) },
  { kind: 'noted', from: 2, lift: (body) => ({ ...Object(body), tone: 'plain' }) },
]

it('lifts an old body through every version to the newest', () => {
  expect(newestVersion('noted', casters)).toBe(3)
  expect(liftBody('noted', 1, { text: 'a' }, casters)).toEqual({ words: 'a', tone: 'plain' })
  expect(liftBody('noted', 2, { words: 'a' }, casters)).toEqual({ words: 'a', tone: 'plain' })
  expect(liftBody('noted', 3, { words: 'a', tone: 'b' }, casters)).toEqual({ words: 'a', tone: 'b' })
})

it('leaves another kind as it is and refuses a version of the future', () => {
  expect(liftBody('ready', 1, { minutes: 3 }, casters)).toEqual({ minutes: 3 })
  expect(() => liftBody('ready', 2, {}, casters)).toThrow('ready has version 2; this program reads 1 to 1')
})
