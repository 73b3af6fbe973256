import { Command } from 'commander'
import { Trouble } from './trouble.ts'

// Each command loads what it needs when it is called: `calc` must not wait for a web server to load.
const legwork = new Command('legwork')
  .description("A suspension bench's book, and the arithmetic it rests on")
  .showHelpAfterError()

legwork
  .command('start')
  .description('open the book of this computer and serve it to the browser')
  .action(async () => {
    const { start } = await import('./start.ts')
    await start()
  })

legwork
  .command('demo')
  .description('serve a throw-away copy of the demonstration workshop')
  .action(async () => {
    const { demo } = await import('./demo.ts')
    await demo()
  })

legwork
  .command('calc')
  .description('answer one calculation: a JSON object on standard input, a JSON object on standard output')
  .argument('<name>', 'which calculation, such as sag or pressure-for-sag')
  .option('--lines', 'one question a line in, one answer a line out', false)
  .action(async (name: string, { lines }: { lines: boolean }) => {
    const { runCalc } = await import('./calc.ts')
    const { stdin, stdout, stderr } = process
    process.exitCode = await runCalc({ name, lines, stdin, stdout, stderr })
  })

legwork
  .command('check')
  .description('check the book of this computer while no server has it open')
  .option('--rebuild', 'work everything that follows from the book out anew, and say what differed', false)
  .action(async (options: { rebuild: boolean }) => {
    const { check } = await import('./check.ts')
    process.exitCode = await check(options)
  })

try {
  await legwork.parseAsync()
} catch (error) {
  process.stderr.write(`legwork: ${error instanceof Trouble ? error.message : explain(error)}\n`)
  process.exitCode = 1
}

/** Errors made for people carry a code and one sentence; anything else is a fault of ours and keeps its stack. */
function explain(error: unknown): string {
  if (!(error instanceof Error)) return String(error)
  return 'code' in error ? error.message : (error.stack ?? error.message)
}
