import { existsSync, readFileSync } from 'node:fs'

/** The faces of the papers: lettering (figures, names, titles) and book (prose, sources); see assets/fonts/build.py. */
export type Face = 'lettering' | 'lettering-500' | 'lettering-600' | 'book' | 'book-600' | 'book-italic'

const stacks: Record<Face, readonly string[]> = {
  lettering: ['national-park-400', 'legwork-marks-400', 'stix-two-text-400', 'dejavu-sans'],
  'lettering-500': ['national-park-500', 'legwork-marks-500', 'stix-two-text-400', 'dejavu-sans'],
  'lettering-600': ['national-park-600', 'legwork-marks-600', 'stix-two-text-600', 'dejavu-sans'],
  book: ['stix-two-text-400', 'legwork-marks-400', 'dejavu-sans'],
  'book-600': ['stix-two-text-600', 'legwork-marks-600', 'dejavu-sans'],
  'book-italic': ['stix-two-text-400-italic', 'stix-two-text-400', 'legwork-marks-400', 'dejavu-sans'],
}

// From the sources the folder is beside us; from the built command (cli/dist) it is in the server's room.
const folder = [
  new URL('../../assets/fonts/', import.meta.url),
  new URL('../../server/assets/fonts/', import.meta.url),
].find((place) => existsSync(new URL('coverage.json', place)))

function read(name: string): Buffer {
  if (!folder) throw new Error('The fonts of the papers are missing: server/assets/fonts/coverage.json was not found.')
  return readFileSync(new URL(name, folder))
}

const files = new Map<string, Buffer>()

/** The bytes of one whole font file, read once. */
export function fontFile(name: string): Buffer {
  const known = files.get(name)
  if (known) return known
  const bytes = read(`${name}.ttf`)
  files.set(name, bytes)
  return bytes
}

let coverage: Map<string, readonly (readonly [number, number])[]> | undefined

function ranges(name: string): readonly (readonly [number, number])[] {
  // Written by build.py beside the fonts: file name → [first, last] code points.
  coverage ??= new Map(
    Object.entries(JSON.parse(read('coverage.json').toString('utf8')) as Record<string, [number, number][]>),
  )
  return coverage.get(name) ?? []
}

const answers = new Map<string, string | null>()

/** The file that sets this character in this face, or null: then a box with its code point is printed. */
export function fileFor(face: Face, codePoint: number): string | null {
  const key = `${face}:${codePoint}`
  const known = answers.get(key)
  if (known !== undefined) return known
  const found =
    stacks[face].find((name) => ranges(name).some(([first, last]) => codePoint >= first && codePoint <= last)) ?? null
  answers.set(key, found)
  return found
}
