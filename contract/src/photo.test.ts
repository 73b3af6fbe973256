import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { jpegMarkers, photoCodes, photoTrouble } from './photo.ts'

// Segments put together by hand after ITU-T T.81, annex B: marker, length (with itself), content.
const segment = (marker: number, content: readonly number[]) => [
  0xff,
  marker,
  (content.length + 2) >> 8,
  (content.length + 2) & 255,
  ...content,
]
const frame = (width: number, height: number) =>
  segment(0xc0, [8, height >> 8, height & 255, width >> 8, width & 255, 1, 1, 0x11, 0])
// A scan with a stuffed 0xFF00 and a restart in it: neither ends it.
const scan = [...segment(0xda, [1, 1, 0, 0, 63, 0]), 0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56]
const jpeg = (before: readonly number[] = [], after: readonly number[] = [], size: [number, number] = [64, 48]) =>
  Uint8Array.from([0xff, 0xd8, ...before, ...frame(...size), ...scan, 0xff, 0xd9, ...after])
const text = (words: string) => [...words].map((letter) => letter.charCodeAt(0))
const exif = segment(0xe1, text('Exif\0\0MM\0*'))

test('reads the size and finds the end behind stuffed bytes and restarts', () => {
  expect(jpegMarkers(jpeg())).toEqual({ width: 64, height: 48, telling: [], trailing: false })
})

test('takes a plain picture, with JFIF and a colour profile', () => {
  const plain = [...segment(0xe0, text('JFIF\0')), ...segment(0xe2, text('ICC_PROFILE\0'))]
  expect(photoTrouble(jpeg(plain))).toBeNull()
})

// EXIF 2.32, 4.7.2: it stands in APP1; XMP too; IPTC in APP13
test.each([
  ['EXIF', jpeg(exif), 'photo.tells-more', 'APP1'],
  ['IPTC', jpeg(segment(0xed, text('Photoshop 3.0\0'))), 'photo.tells-more', 'APP13'],
  ['a comment', jpeg(segment(0xfe, text('60.1 N 24.9 E'))), 'photo.tells-more', 'COM'],
  ['a second picture', jpeg(segment(0xe2, text('MPF\0'))), 'photo.tells-more', 'APP2'],
  ['a film behind the picture', jpeg([], [1, 2, 3]), 'photo.tells-more', 'data after the end'],
  ['another kind', Uint8Array.from([0x89, 0x50, 0x4e, 0x47]), 'photo.not-jpeg', '4 bytes beginning 89 50 4e 47'],
  ['half a picture', jpeg().slice(0, 30), 'photo.not-jpeg', '30 bytes beginning ff d8 ff c0'],
  ['nothing', new Uint8Array(), 'photo.not-jpeg', 'nothing'],
  ['a large picture', jpeg([], [], [2001, 10]), 'photo.too-large', '2001 × 10 px'],
  ['a heavy file', new Uint8Array(5 * 1024 * 1024), 'photo.too-large', '5.0 MB'],
])('%s is refused', (_what, bytes, code, came) => {
  expect(photoTrouble(bytes)).toMatchObject({ field: 'photo', code, came })
})

test('the codes stand in docs/errors.md with the same words, no more and no less', () => {
  const page = readFileSync(new URL('../../docs/errors.md', import.meta.url), 'utf8')
  const section = page.split('## Photos')[1]?.split('\n## ')[0] ?? ''
  const rows = [...section.matchAll(/^\| `([^`]+)`\s*\| (.+?)\s*\|$/gm)].map(([, code, when]) => [code, when])
  expect(Object.fromEntries(rows)).toEqual(photoCodes)
})
