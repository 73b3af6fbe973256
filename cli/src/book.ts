/** The book as a command asks it: of the server that has it open, else opened here for the moment. */
import { FolderInUse, openBook, StartRefused } from '@legwork/server'
import type { Settings } from './settings.ts'
import { Trouble } from './trouble.ts'

export interface Book {
  /** @throws Trouble with every line that the book says against it */
  get: (path: string) => Promise<string>
  post: (path: string, body: object) => Promise<string>
  close: () => Promise<void>
}

interface ToldError {
  field: string
  came: string
  allowed: string
  next: string
  line?: number
  column?: number
}

/** One line an error: where it stands, what came, what is allowed, what to do. */
function toldError({ field, came, allowed, next, line, column }: ToldError): string {
  const place = line === undefined ? '' : `line ${line}, column ${column}: `
  return `${place}${field ? `${field} is ` : ''}${came}; it must be ${allowed}. ${next}`
}

function refusal(text: string): Trouble {
  let problem: { title?: string; errors?: readonly ToldError[] } = {}
  try {
    problem = JSON.parse(text) // the server answers a refusal with a problem document
  } catch {
    return new Trouble(`The book answered: ${text.slice(0, 200)}`)
  }
  const { title = 'Not taken', errors = [] } = problem
  return new Trouble([title, ...errors.map(toldError)].join('\n  '))
}

type Ask = (method: 'GET' | 'POST', path: string, body?: object) => Promise<{ status: number; text: string }>

function askServer({ host, port }: Settings): Ask {
  const address = `http://${host.includes(':') ? `[${host}]` : host}:${port}`
  return async (method, path, body) => {
    const sent =
      body === undefined ? {} : { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }
    const answer = await fetch(`${address}${path}`, { method, ...sent }).catch(() => null)
    if (!answer)
      throw new Trouble(
        `A server has the book open, but none answers at ${address}; set LEGWORK_PORT to its port, or stop it first.`,
      )
    return { status: answer.status, text: await answer.text() }
  }
}

function bookOf(ask: Ask, close: () => Promise<void>): Book {
  const taken = async (method: 'GET' | 'POST', path: string, body?: object): Promise<string> => {
    const { status, text } = await ask(method, path, body)
    if (status >= 300) throw refusal(text)
    return text
  }
  return { get: (path) => taken('GET', path), post: (path, body) => taken('POST', path, body), close }
}

/** @throws Trouble, one sentence, where the book can't be opened */
export async function askBook(settings: Settings, now: string | undefined): Promise<Book> {
  const { data, database } = settings
  try {
    const book = await openBook({ data, ...(database ? { database } : {}), ...(now ? { now } : {}) })
    return bookOf(book.ask, book.close)
  } catch (reason) {
    if (reason instanceof FolderInUse) return bookOf(askServer(settings), async () => undefined)
    throw reason instanceof StartRefused ? new Trouble(reason.message) : reason
  }
}
