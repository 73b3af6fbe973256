/**
 * A calculation's input as a short text for an address: `spring:(kind:air,bore:32_mm),load:351_N`.
 *
 * Objects are `(key:value,…)`, lists `(!value,…)`. The outermost parentheses and those that would close at the very end are
 * left out: programs that find addresses in plain text cut a last parenthesis off. A space is `_`, `~` takes the meaning
 * from the sign after it, and `*` in front says that what looks like a number or a word of JSON is text.
 */
const signs = /[~_(),:!*{]/g
const notText = /^(?:-?\d+(?:\.\d+)?(?:e[+-]?\d+)?|true|false|null|)$/i
const deepest = 32

/** Longer ones are not put into an address: servers and programs refuse them. */
export const longestInput = 6000

function textOf(text: string): string {
  return notText.test(text) ? `*${text}` : text.replace(signs, '~$&').replaceAll(' ', '_')
}

function valueText(value: unknown): string {
  if (typeof value === 'string') return textOf(value)
  if (Array.isArray(value)) return `(!${value.map(valueText).join(',')})`
  if (value !== null && typeof value === 'object') return `(${fieldsText(value)})`
  return String(value)
}

function fieldsText(value: object): string {
  return Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .map(([key, inner]) => `${textOf(key)}:${valueText(inner)}`)
    .join(',')
}

/**
 * @example writeInput({ wanted: '5 N', turns: 3 }) // 'wanted:5_N,turns:3'
 */
export function writeInput(input: object): string {
  const text = fieldsText(input).replace(/(?<=[^~])\)+$/, '')
  // What `encodeURI` leaves as it is and an address gives a meaning.
  return encodeURI(text).replace(/[#&+?']/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`)
}

class Unreadable extends Error {}

/** Reads from a place in the text on; `at` moves along. */
class Reader {
  private readonly text: string
  private at = 0

  constructor(text: string) {
    this.text = text
  }

  private takes(sign: string): boolean {
    if (this.text[this.at] !== sign) return false
    this.at += 1
    return true
  }

  private word(): { text: string; marked: boolean } {
    const marked = this.takes('*')
    let text = ''
    for (; this.at < this.text.length; this.at += 1) {
      const sign = this.text[this.at] ?? ''
      if (/[(),:!*]/.test(sign)) break
      if (sign === '~') {
        this.at += 1
        text += this.text[this.at] ?? ''
      } else text += sign === '_' ? ' ' : sign
    }
    return { text, marked }
  }

  /** Up to a closing parenthesis or the end, which closes everything. */
  private *members(): Generator<undefined> {
    while (this.at < this.text.length && !this.takes(')')) {
      yield undefined
      if (this.takes(',')) continue
      if (this.at < this.text.length && this.text[this.at] !== ')') throw new Unreadable()
    }
  }

  private value(depth: number): unknown {
    if (this.takes('(')) return this.takes('!') ? this.list(depth + 1) : this.object(depth + 1)
    const { text, marked } = this.word()
    return marked || !notText.test(text) ? text : JSON.parse(text === '' ? 'null' : text.toLowerCase())
  }

  private list(depth: number): unknown[] {
    if (depth > deepest) throw new Unreadable()
    const list: unknown[] = []
    for (const _ of this.members()) list.push(this.value(depth))
    return list
  }

  object(depth: number): Record<string, unknown> {
    if (depth > deepest) throw new Unreadable()
    const entries: [string, unknown][] = []
    for (const _ of this.members()) {
      const key = this.word().text
      if (!this.takes(':')) throw new Unreadable()
      entries.push([key, this.value(depth)])
    }
    return Object.fromEntries(entries)
  }

  get isDone(): boolean {
    return this.at >= this.text.length
  }
}

/**
 * Reads this notation, or plain JSON.
 *
 * @param address  what stood in the address, percent signs and all
 * @returns null where it can't be read
 * @example readInput('wanted:5_N,turns:3') // {"wanted":"5 N","turns":3}
 */
export function readInput(address: string): Record<string, unknown> | null {
  try {
    const text = decodeURIComponent(address)
    if (text.startsWith('{')) return JSON.parse(text)
    const reader = new Reader(text)
    const input = reader.object(0)
    return reader.isDone ? input : null
  } catch (trouble) {
    // A cut percent sign, a number that JSON does not know, a sign where none may stand.
    if (trouble instanceof Unreadable || trouble instanceof URIError || trouble instanceof SyntaxError) return null
    throw trouble
  }
}
