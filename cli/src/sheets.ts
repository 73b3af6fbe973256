/** `legwork export sheet` and `legwork import sheet`: sheets as files, without the pages. */
import { readFile, writeFile } from 'node:fs/promises'
import type { RegistersAnswer, WorkshopLine } from '@legwork/contract'
import { askBook, type Book } from './book.ts'
import type { Settings } from './settings.ts'
import { Trouble } from './trouble.ts'

export interface SheetOptions {
  settings: Settings
  now: string | undefined
  /** By its name; the only one of this computer that is no demonstration, where none is named. */
  workshop: string | undefined
  out: (text: string) => void
}

const named = (list: readonly { name: string }[]): string =>
  list.map(({ name }) => `'${name}'`).join(', ') || 'none yet'

async function workshopOf(book: Book, wanted: string | undefined): Promise<WorkshopLine> {
  const { workshops } = JSON.parse(await book.get('/api/workshops')) as { workshops: WorkshopLine[] } // its route's shape
  const own = workshops.filter(({ demo }) => !demo)
  const fits =
    wanted === undefined ? (own.length > 0 ? own : workshops) : workshops.filter(({ name }) => name === wanted)
  const [only, ...others] = fits
  if (only && others.length === 0) return only
  const came = wanted === undefined ? `There are ${fits.length} workshops` : `No workshop is named '${wanted}'`
  throw new Trouble(`${came}; say one with --workshop: ${named(workshops)}.`)
}

async function withWorkshop(
  { settings, now, workshop }: SheetOptions,
  work: (book: Book, path: string, registers: RegistersAnswer) => Promise<void>,
): Promise<void> {
  const book = await askBook(settings, now)
  try {
    const path = `/api/workshops/${(await workshopOf(book, workshop)).id}`
    // The route's answer has this shape.
    await work(book, path, JSON.parse(await book.get(`${path}/registers`)) as RegistersAnswer)
  } finally {
    await book.close()
  }
}

/**
 * Writes one revision of a sheet to a file, or to standard output.
 *
 * @throws Trouble where there is no such workshop, sheet or revision, or the file can't be written
 */
export async function exportSheet(
  wanted: { name: string; revision: string | undefined; file: string | undefined },
  options: SheetOptions,
): Promise<void> {
  await withWorkshop(options, async (book, path, { sheets }) => {
    const { name, revision, file } = wanted
    const same = (text: string): boolean => text.toLocaleLowerCase('en-GB') === name.toLocaleLowerCase('en-GB')
    const found = sheets.findLast(({ body }) => body.id === name || same(body.name))
    if (!found) {
      const all = [...new Map(sheets.map(({ body }) => [body.id, body])).values()]
      throw new Trouble(`No sheet is named '${name}'; there are: ${named(all)}.`)
    }
    const asked = revision === undefined ? '' : `?revision=${encodeURIComponent(revision)}`
    const text = await book.get(`${path}/sheets/${found.body.id}/file${asked}`)
    if (file === undefined) return options.out(text)
    await writeFile(file, text, { flag: 'wx' }).catch((reason: NodeJS.ErrnoException) => {
      const why = reason.code === 'EEXIST' ? 'it is there already; give another name' : reason.message
      throw new Trouble(`${file} was not written: ${why}.`)
    })
  })
}

const became = {
  new: 'is a new sheet',
  revision: 'is one more revision of the sheet that was here',
  same: 'says what is here already; nothing was written',
} as const

/**
 * Reads a sheet's file in, all of it or nothing.
 *
 * @throws Trouble with a line for each error: line, column, field, what came, what is allowed
 */
export async function importSheet(
  wanted: { file: string; by: string | undefined; elsewhere: boolean },
  options: SheetOptions,
): Promise<void> {
  const file = await readFile(wanted.file, 'utf8').catch((reason: Error) => {
    throw new Trouble(`${wanted.file} can't be read: ${reason.message}.`)
  })
  await withWorkshop(options, async (book, path, { people }) => {
    const { by, elsewhere } = wanted
    const staff = people.map(({ body }) => body)
    const person =
      by === undefined
        ? staff.find(({ role }) => role === 'owner')
        : staff.find(({ name, initials }) => name === by || initials === by)
    if (!person) throw new Trouble(`Nobody here is '${by}'; say one with --by: ${named(staff)}.`)
    const answer = await book.post(`${path}/sheets/file`, { person: person.id, file, elsewhere })
    // The route's answer has this shape by its schema.
    const read = JSON.parse(answer) as { became: keyof typeof became; name: string; revision: string }
    options.out(`${read.name}, revision ${read.revision}, ${became[read.became]}.\n`)
  })
}
