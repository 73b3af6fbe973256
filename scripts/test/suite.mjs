import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { run, runTool, tools } from './run.mjs'

/** Counts a report of vitest's JSON reporter. With `strict`, a test that did not run counts as failed. */
export function countReport(report, strict) {
  const tests = report.testResults.flatMap((file) => file.assertionResults)
  const passed = tests.filter(({ status }) => status === 'passed').length
  const failed = tests.filter(({ status }) => status === 'failed').length
  // A file that fell over before its first test, or while cleaning up, is a failure no single test shows.
  const brokenFiles = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some(({ status }) => status === 'failed'),
  )
  const notRun = tests.filter(({ status }) => status !== 'passed' && status !== 'failed')
  return { passed, failed: failed + brokenFiles.length + (strict ? notRun.length : 0), notRun, brokenFiles }
}

/** Runs one vitest project, or the part of it under `paths`. No test at all is a failure. */
export async function suite(project, paths = [], { environment = {}, node = process.execPath } = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'legwork-test-'))
  const file = join(folder, 'report.json')
  const args = ['run', '--project', project, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`]
  try {
    const options = { environment: { FORCE_COLOR: process.stdout.isTTY ? '1' : '0', ...environment } }
    const { code } =
      node === process.execPath
        ? await runTool('vitest', [...args, ...paths], options)
        : await run(node, [tools.vitest, ...args, ...paths], options)
    if (!existsSync(file)) throw new Error(`the ${project} tests ended with ${code} and left no report`)
    const { passed, failed, notRun, brokenFiles } = countReport(
      JSON.parse(readFileSync(file, 'utf8')),
      process.env.CI === 'true',
    )
    for (const { fullName, status } of notRun) process.stdout.write(`not run (${status}): ${fullName}\n`)
    for (const { name } of brokenFiles) process.stdout.write(`failed outside its tests: ${name}\n`)
    if (passed + failed === 0) throw new Error(`no ${project} test was found`)
    // Vitest also fails on an unhandled error between tests, which no entry of the report shows.
    return { passed, failed: failed === 0 && code !== 0 ? 1 : failed }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
