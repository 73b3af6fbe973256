import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openBook, startServer } from '@legwork/server'
import { demoSheet, demoUnits, writeSheetFile } from '@legwork/trade'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Settings } from './settings.ts'
import { exportSheet, importSheet } from './sheets.ts'

const now = '2026-06-03T10:00:00Z'
const folder = mkdtempSync(join(tmpdir(), 'legwork-sheets-'))
const files = mkdtempSync(join(tmpdir(), 'legwork-files-'))
const settings: Settings = { data: folder, host: '127.0.0.1', port: 1 }
const unit = demoUnits.find(({ key }) => key === 'U01')
const text = unit
  ? writeSheetFile(demoSheet(unit, '0190b5a0-0000-7000-8000-00000000000a'), {
      person: () => null,
      instrument: () => null,
    })
  : ''

function at(name: string, content: string): string {
  const path = join(files, name)
  writeFileSync(path, content)
  return path
}

const owner = {
  name: 'Odalys Fennimarch',
  initials: 'OF',
  role: 'owner',
  measures: { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' },
}
async function openWorkshop(data: string, name: string): Promise<void> {
  const book = await openBook({ data, now })
  expect((await book.ask('POST', '/api/workshops', { name, home: false, person: owner })).status).toBe(201)
  await book.close()
}

let said = ''
const options = (port = 1, workshop?: string) => ({
  settings: { ...settings, port },
  now,
  workshop,
  out: (part: string) => {
    said += part
  },
})
async function importing(file: string, by?: string): Promise<string> {
  said = ''
  await importSheet({ file, by, elsewhere: false }, options())
  return said
}
const exporting = async (name: string, revision?: string, file?: string): Promise<string> => {
  said = ''
  await exportSheet({ name, revision, file }, options())
  return said
}

describe('sheets as files, from the command', () => {
  beforeAll(() => openWorkshop(folder, 'Bench'))

  it('come in, and go out as they came', async () => {
    expect(await importing(at('c.json', text))).toBe('Q35-150, revision C, is a new sheet.\n')
    expect(await exporting('q35-150')).toBe(text)
    expect(await importing(at('c.json', text), 'OF')).toContain('says what is here already; nothing was written')
  })

  it('keep every revision', async () => {
    const changed = text.replace('"25 N·m"', '"24 N·m"')
    expect(await importing(at('c1.json', changed))).toBe(
      'Q35-150, revision C.1, is one more revision of the sheet that was here.\n',
    )
    expect(await exporting('Q35-150')).toContain('"24 N·m"')
    expect(await exporting('Q35-150', 'C')).toBe(text)
  })

  it('are written to a file, and never over one that is there', async () => {
    const path = join(files, 'out.json')
    expect(await exporting('Q35-150', 'C', path)).toBe('')
    expect(readFileSync(path, 'utf8')).toBe(text)
    await expect(exporting('Q35-150', 'C', path)).rejects.toThrow('it is there already; give another name')
  })

  it('are refused with a line for each error, and nothing is written', async () => {
    const wrong = text.replace('"24 N·m"', '').replace('"25 N·m"', '"25"').replace('"sealed-cartridge"', '"magic"')
    const lines = wrong.split('\n')
    const line = (piece: string): number => lines.findIndex((row) => row.includes(piece)) + 1
    const refusal = await importing(at('wrong.json', wrong)).catch((reason: Error) => reason.message)
    expect(refusal.split('\n').map((row) => row.trim())).toEqual([
      'The file was not read in',
      expect.stringMatching(`^line ${line('magic')}, column \\d+: damper is "magic"; it must be open-bath,`),
      expect.stringMatching(
        `^line ${line('"25"')}, column \\d+: spring.capTorque.value is "25"; it must be a number with`,
      ),
    ])
    expect(await exporting('Q35-150')).toContain('"24 N·m"')
  })

  it('say line and column of what is no JSON', async () => {
    await expect(importing(at('no.json', '{\n  "format": legwork}'))).rejects.toThrow(
      'line 2, column 13: legwork}; it must be a value',
    )
  })

  it.each([
    ['a file that is not there', () => importing(join(files, 'nowhere.json')), 'nowhere.json can’t be read'],
    [
      'nobody',
      () => importing(at('c.json', text), 'XX'),
      "Nobody here is 'XX'; say one with --by: 'Odalys Fennimarch'.",
    ],
    ['a sheet that is not here', () => exporting('Q99'), "No sheet is named 'Q99'; there are: 'Q35-150'."],
    ['a revision that is not here', () => exporting('Q35-150', 'Z'), 'revision is Z; it must be C, C.1.'],
    [
      'no such workshop',
      () => exportSheet({ name: 'Q', revision: undefined, file: undefined }, options(1, 'Elsewhere')),
      "No workshop is named 'Elsewhere'; say one with --workshop: 'Bench'.",
    ],
  ])('%s is one sentence', async (_what, act, sentence) => {
    const message = await act().then(
      () => 'it was done',
      (reason: Error) => reason.message,
    )
    expect(message.replaceAll("can't", 'can’t')).toContain(sentence)
  })

  it('ask the server that has the book open', async () => {
    const probe = createServer().listen(0, '127.0.0.1')
    await new Promise((resume) => probe.once('listening', resume))
    const address = probe.address()
    const port = typeof address === 'object' && address ? address.port : 0
    await new Promise((resume) => probe.close(resume))
    const server = await startServer({ data: folder, host: '127.0.0.1', port, pages: null, now })
    try {
      said = ''
      await exportSheet({ name: 'Q35-150', revision: 'C', file: undefined }, options(port))
      expect(said).toBe(text)
      await expect(exporting('Q35-150')).rejects.toThrow('A server has the book open, but none answers at')
    } finally {
      await server.close()
    }
  })
})
