/** `legwork check --rebuild`: works the projections out anew and says what differed. */
import { checkBook } from '@legwork/server'
import { readSettings } from './settings.ts'
import { Trouble } from './trouble.ts'

/** @returns the exit code: 0 where nothing differed, 1 where something did and was mended */
export async function check({ rebuild }: { rebuild: boolean }): Promise<number> {
  if (!rebuild)
    throw new Trouble('Say what to check: `legwork check --rebuild` works the projections out anew and compares them.')
  const { data, database } = readSettings(process.env, process.platform)
  const { differing, rows } = await checkBook({ data, ...(database ? { database } : {}) }).catch((reason: unknown) => {
    throw reason instanceof Error && reason.name === 'StartRefused' ? new Trouble(reason.message) : reason
  })
  let wrong = 0
  for (const [table, count] of Object.entries(rows)) {
    const off = Reflect.get(differing, table) as number // both have the same tables
    wrong += off
    process.stdout.write(
      `${table}: ${count} rows, ${off === 0 ? 'none differed' : `${off} differed and were mended`}\n`,
    )
  }
  return wrong === 0 ? 0 : 1
}
