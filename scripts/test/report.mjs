export function totalsOf(results) {
  const sum = (key) => results.reduce((total, result) => total + result[key], 0)
  return { passed: sum('passed'), failed: sum('failed') }
}

export function printTable(results) {
  process.stdout.write(`\n${'part'.padEnd(12)}${'passed'.padStart(8)}${'failed'.padStart(8)}${'seconds'.padStart(9)}\n`)
  for (const { name, passed, failed, seconds } of results) {
    const numbers = [String(passed).padStart(8), String(failed).padStart(8), seconds.toFixed(1).padStart(9)]
    process.stdout.write(`${name.padEnd(12)}${numbers.join('')}\n`)
  }
}
