#!/usr/bin/env node
// `npm test`, or `npm test -- unit e2e` for some parts only. Every part runs even where an earlier one failed.
// The last line reads `N passed, N failed`: a check counts as one, a test file's tests each as one.
import { parts, usual } from './test/parts.mjs'
import { printTable, totalsOf } from './test/report.mjs'

const asked = process.argv.slice(2)
const unknown = asked.filter((name) => !Object.hasOwn(parts, name))
if (unknown.length > 0) {
  process.stderr.write(`There is no part '${unknown.join("', '")}'; there are ${Object.keys(parts).join(', ')}.\n`)
  process.exit(2)
}

const results = []
for (const name of asked.length > 0 ? asked : usual) {
  process.stdout.write(`\n== ${name}: ${parts[name].about}\n`)
  const began = performance.now()
  let result
  try {
    result = await parts[name].run()
  } catch (error) {
    process.stdout.write(`${error.message}\n`)
    result = { passed: 0, failed: 1 }
  }
  results.push({ name, ...result, seconds: (performance.now() - began) / 1000 })
}

printTable(results)
const totals = totalsOf(results)
process.stdout.write(`${totals.passed} passed, ${totals.failed} failed\n`)
process.exitCode = totals.failed === 0 ? 0 : 1
