/** JSON (RFC 8259) read with the line and column of every value, so that a refusal can be found in the file. */

/** Both from 1; a column counts characters as an editor does. */
export interface TextPlace {
  line: number
  column: number
}

export type PlacedJson =
  | { ok: true; value: unknown; placeOf: (path: string) => TextPlace }
  | { ok: false; place: TextPlace; came: string; allowed: string }

/** Deep enough for any sheet, shallow enough for the stack. */
const deepest = 50

class SyntaxTrouble extends Error {
  readonly at: number
  readonly came: string
  readonly allowed: string
  constructor(at: number, came: string, allowed: string) {
    super(allowed)
    this.at = at
    this.came = came
    this.allowed = allowed
  }
}

const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y
// biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 8259 section 7 forbids exactly these in a text
const string = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y
const words: readonly (readonly [string, unknown])[] = [
  ['true', true],
  ['false', false],
  ['null', null],
]

class Reading {
  readonly #text: string
  readonly places = new Map<string, number>()
  #at = 0

  constructor(text: string) {
    this.#text = text
  }

  whole(): unknown {
    const value = this.#value('', 0)
    this.#space()
    if (this.#at < this.#text.length) throw this.#trouble('nothing more after the end of the object')
    return value
  }

  #trouble(allowed: string): SyntaxTrouble {
    const rest = this.#text.slice(this.#at)
    const came = rest === '' ? 'the end of the text' : (/^(?:\S{1,20}|\s)/.exec(rest)?.[0] ?? '')
    return new SyntaxTrouble(this.#at, came.trim() === '' ? 'a blank' : came, allowed)
  }

  #space(): void {
    while (/[ \t\r\n]/.test(this.#text.charAt(this.#at))) this.#at += 1
  }

  #take(letter: string): boolean {
    this.#space()
    if (this.#text.charAt(this.#at) !== letter) return false
    this.#at += 1
    return true
  }

  #match(pattern: RegExp): string | null {
    pattern.lastIndex = this.#at
    const found = pattern.exec(this.#text)?.[0]
    if (found === undefined) return null
    this.#at += found.length
    return found
  }

  #value(path: string, depth: number): unknown {
    this.#space()
    if (depth > deepest) throw this.#trouble(`no more than ${deepest} objects inside one another`)
    this.places.set(path, this.#at)
    if (this.#take('{')) return this.#object(path, depth)
    if (this.#take('[')) return this.#list(path, depth)
    if (this.#text.charAt(this.#at) === '"') return this.#string()
    const digits = this.#match(number)
    if (digits !== null) return Number(digits)
    for (const [word, value] of words)
      if (this.#text.startsWith(word, this.#at)) {
        this.#at += word.length
        return value
      }
    throw this.#trouble('a value: a text in "…", a number, true, false, null, {…} or […]')
  }

  #string(): string {
    const found = this.#match(string)
    if (found === null) throw this.#trouble('a text that ends in " on its own line, with \\" and \\\\ inside')
    // The pattern is the grammar's: what it matched is a JSON text.
    return JSON.parse(found) as string
  }

  #object(path: string, depth: number): unknown {
    const found: [string, unknown][] = []
    const names = new Set<string>()
    if (this.#take('}')) return {}
    for (;;) {
      this.#space()
      const start = this.#at
      if (this.#text.charAt(start) !== '"') throw this.#trouble('the name of a field in "…"')
      const name = this.#string()
      if (names.has(name)) throw new SyntaxTrouble(start, `"${name}" a second time`, 'every name once in its object')
      names.add(name)
      if (!this.#take(':')) throw this.#trouble(`: after "${name}"`)
      found.push([name, this.#value(path ? `${path}.${name}` : name, depth + 1)])
      if (this.#take('}')) return Object.fromEntries(found)
      if (!this.#take(',')) throw this.#trouble(', or } after a value')
    }
  }

  #list(path: string, depth: number): unknown {
    const found: unknown[] = []
    if (this.#take(']')) return found
    for (;;) {
      found.push(this.#value(path ? `${path}.${found.length}` : String(found.length), depth + 1))
      if (this.#take(']')) return found
      if (!this.#take(',')) throw this.#trouble(', or ] after a value')
    }
  }
}

function placeIn(text: string, at: number): TextPlace {
  const before = text.slice(0, at)
  const line = before.split(/\r\n|\n|\r/)
  return { line: line.length, column: [...(line.at(-1) ?? '')].length + 1 }
}

/**
 * A JSON text as a value, with the place of each field. A name that stands twice in one object is refused: nobody could
 * say which one counts.
 *
 * @returns `placeOf('legs.left.bathOil')`: where that value begins; for a field that is not there, where its object begins
 * @source RFC 8259 (grammar)
 * @example readPlacedJson('{"a": [1, 2]}').ok // true
 */
export function readPlacedJson(text: string): PlacedJson {
  const clean = text.startsWith('\ufeff') ? text.slice(1) : text
  const reading = new Reading(clean)
  try {
    const value = reading.whole()
    const placeOf = (path: string): TextPlace => {
      const parts = path.split('.')
      for (let count = parts.length; count > 0; count -= 1) {
        const at = reading.places.get(parts.slice(0, count).join('.'))
        if (at !== undefined) return placeIn(clean, at)
      }
      return placeIn(clean, reading.places.get('') ?? 0)
    }
    return { ok: true, value, placeOf }
  } catch (trouble) {
    if (!(trouble instanceof SyntaxTrouble)) throw trouble
    return { ok: false, place: placeIn(clean, trouble.at), came: trouble.came, allowed: trouble.allowed }
  }
}
