import { execFileSync } from 'node:child_process'
import { cpus, loadavg, release, totalmem, type } from 'node:os'

const git = (...words: string[]) => execFileSync('git', words, { encoding: 'utf8' }).trim()

/** Lines that say where and on what the figures were taken. */
export function machineLines(): string[] {
  const all = cpus()
  const memory = Math.round(totalmem() / 2 ** 30)
  const changed =
    git('status', '--porcelain', '--', 'engine', 'benchmarks') === '' ? '' : ', with changes not committed'
  return [
    `Machine: ${all.length} × ${all[0]?.model.trim() ?? 'unknown processor'}, ${memory} GiB, ${type()} ${release()}`,
    `Load average when it began: ${loadavg()
      .map((load) => load.toFixed(1))
      .join(', ')} (above ${all.length} the machine was shared, and every figure is the slower for it)`,
    `Node ${process.versions.node}`,
    `Commit ${git('rev-parse', '--short', 'HEAD')}${changed}`,
  ]
}
