/** `legwork calc NAME`: JSON in, JSON out; with `--lines` one object a line. */
import { once } from 'node:events'
import { createInterface } from 'node:readline'
import { type Answer, runCalculation } from '@legwork/contract/calculations/index.ts'
import { type RefusedField, refusalSentence } from '@legwork/engine'

export interface CalcOptions {
  name: string
  lines: boolean
  stdin: NodeJS.ReadableStream
  stdout: NodeJS.WritableStream
  stderr: NodeJS.WritableStream
}

function answerTo(name: string, text: string): Answer {
  let input: unknown
  try {
    input = JSON.parse(text)
  } catch (trouble) {
    const came = trouble instanceof Error ? trouble.message : 'no JSON'
    const next = 'Send one JSON object, like {"altitude": "2000 m"}.'
    return { ok: false, errors: [{ field: 'input', code: 'not-json', came, allowed: 'one JSON object', next }] }
  }
  return runCalculation(name, input)
}

const oneLine = (error: RefusedField): string => refusalSentence(error).replaceAll('\n', ' ')

/**
 * Answers one question, or one a line.
 *
 * @returns the exit code: 0, or 2 where the question was refused; a refused line among many stays on its line
 */
export async function runCalc({ name, lines, stdin, stdout, stderr }: CalcOptions): Promise<number> {
  if (lines) {
    for await (const line of createInterface({ input: stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
      if (line.trim() === '') continue
      const answer = answerTo(name, line)
      const object = answer.ok ? answer.output : { error: { errors: answer.errors } }
      // A slow reader must not make millions of answers pile up in memory.
      if (!stdout.write(`${JSON.stringify(object)}\n`)) await once(stdout, 'drain')
    }
    return 0
  }
  const parts: string[] = []
  for await (const part of stdin) parts.push(String(part))
  const answer = answerTo(name, parts.join(''))
  if (answer.ok) {
    stdout.write(`${JSON.stringify(answer.output, null, 2)}\n`)
    return 0
  }
  for (const error of answer.errors) stderr.write(`${oneLine(error)}\n`)
  return 2
}
