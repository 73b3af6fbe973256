import { execFileSync } from 'node:child_process'
import { cpus, loadavg, release, totalmem, type } from 'node:os'

const git = (...words: string[]) => execFileSync('git', words, { encoding: 'utf8' }).trim()

/** Programs that wanted a processor in the last minute. */
export const lastMinute = () => (loadavg()[0] ?? Number.NaN).toFixed(1)

/** Lines that say where and on what the figures were taken. */
export function machineLines(): string[] {
  const all = cpus()
  const memory = Math.round(totalmem() / 2 ** 30)
  const changed =
    git('status', '--porcelain', '--', 'engine', 'benchmarks') === '' ? '' : ', with changes not committed'
  return [
    `Machine: ${all.length} × ${all[0]?.model.trim() ?? 'unknown processor'}, ${memory} GiB, ${type()} ${release()}`,
    `Node ${process.versions.node}`,
    `Commit ${git('rev-parse', '--short', 'HEAD')}${changed}`,
  ]
}
