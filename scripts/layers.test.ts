import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../', import.meta.url))

/** A tree of a few lines with no breach in it; each case below adds exactly one. */
const sound = {
  'tsconfig.json': '{ "compilerOptions": { "allowImportingTsExtensions": true, "noEmit": true } }',
  'package.json': '{ "devDependencies": { "vitest": "1.0.0" } }',
  'node_modules/hoisted/package.json': '{ "name": "hoisted", "main": "index.js" }',
  'node_modules/hoisted/index.js': 'module.exports = 1',
  'engine/package.json': '{}',
  'engine/src/index.ts': "export { spring } from './spring.ts'",
  'engine/src/spring.ts': 'export const spring = 1',
  'trade/package.json': '{}',
  'trade/src/index.ts': "export { spring } from '../../engine/src/index.ts'",
  'server/package.json': '{ "dependencies": { "hoisted": "1.0.0" } }',
  'server/src/index.ts': "import 'node:fs'\nimport 'hoisted'\nexport { spring } from '../../trade/src/index.ts'",
  'web/package.json': '{}',
  'web/src/index.ts': "export { spring } from '../../trade/src/index.ts'",
}

function breachesIn(files: Record<string, string>): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'legwork-layers-'))
  try {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true })
      writeFileSync(join(folder, name), text)
    }
    const program = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs')
    const config = ['--config', join(root, '.dependency-cruiser.cjs'), '--output-type', 'json']
    const output = execFileSync(process.execPath, [program, ...config, 'engine', 'trade', 'server', 'web'], {
      cwd: folder,
      encoding: 'utf8',
    })
    // The shape is dependency-cruiser's own JSON output.
    const { summary } = JSON.parse(output) as { summary: { violations: { rule: { name: string } }[] } }
    return [...new Set(summary.violations.map(({ rule }) => rule.name))].sort()
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

describe('the layer check', { timeout: 60_000 }, () => {
  it('lets a sound tree pass', () => {
    expect(breachesIn(sound)).toEqual([])
  })

  it.each([
    ['an arrow the wrong way', 'engine/src/up.ts', "import '../../server/src/index.ts'", 'engine-imports-only-below'],
    ['pages reaching into the server', 'web/src/x.ts', "import '../../server/src/index.ts'", 'web-imports-only-below'],
    [
      'types only, the wrong way',
      'engine/src/t.ts',
      "import type {} from '../../trade/src/index.ts'",
      'engine-imports-only-below',
    ],
    ['a package another room declared', 'web/src/x.ts', "import 'hoisted'", 'declared-dependencies-only'],
    ['the disk in a pure room', 'trade/src/x.ts', "import 'node:fs'", 'pure-rooms-touch-no-machine'],
    ['the disk in a page', 'web/src/x.ts', "import 'node:fs'", 'pages-touch-no-machine'],
    ['a ring', 'engine/src/spring.ts', "import './index.ts'\nexport const spring = 1", 'no-cycles'],
    ['an import that leads nowhere', 'engine/src/x.ts', "import './gone.ts'", 'nothing-unresolvable'],
    ['a test in the product', 'server/src/x.ts', "import '../../engine/src/a.test.ts'", 'no-tests-in-the-product'],
  ])('finds %s', (_what, name, text, rule) => {
    expect(breachesIn({ ...sound, 'engine/src/a.test.ts': '', [name]: text })).toEqual([rule])
  })
})
