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

async function sheetOptions(workshop: string | undefined) {
  const { readSettings } = await import('./settings.ts')
  const settings = readSettings(process.env, process.platform)
  return { settings, now: process.env.LEGWORK_NOW, workshop, out: (text: string) => void process.stdout.write(text) }
}

legwork
  .command('export')
  .description('write something of the book to a file')
  .command('sheet')
  .description('write one revision of a sheet as JSON (docs/sheet-file.md)')
  .argument('<name>', 'the sheet, by its name')
  .argument('[file]', 'where to; standard output where none is named')
  .option('--revision <revision>', 'which revision, instead of the newest')
  .option('--workshop <name>', 'which workshop, where there are several')
  .action(async (name: string, file: string | undefined, options: { revision?: string; workshop?: string }) => {
    const { exportSheet } = await import('./sheets.ts')
    await exportSheet({ name, file, revision: options.revision }, await sheetOptions(options.workshop))
  })

legwork
  .command('import')
  .description('read a file into the book')
  .command('sheet')
  .description('read a sheet’s file in: a new sheet, or one more revision of the one that is here')
  .argument('<file>', 'JSON, as docs/sheet-file.md says')
  .option('--by <name>', 'who reads it in, by name or initials, instead of the owner')
  .option('--measured-elsewhere', 'what people of another workshop measured counts as a handbook’s value', false)
  .option('--workshop <name>', 'which workshop, where there are several')
  .action(async (file: string, options: { by?: string; measuredElsewhere: boolean; workshop?: string }) => {
    const { importSheet } = await import('./sheets.ts')
    const { by, measuredElsewhere: elsewhere, workshop } = options
    await importSheet({ file, by, elsewhere }, await sheetOptions(workshop))
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
