import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../', import.meta.url))

function markdownUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((item) => {
    if (item.isDirectory()) {
      const skipped = item.name.startsWith('.') || ['node_modules', 'dist', 'dist.new'].includes(item.name)
      return skipped ? [] : markdownUnder(join(folder, item.name))
    }
    return item.name.endsWith('.md') ? [join(folder, item.name)] : []
  })
}

/** Targets of links and pictures, without code, where brackets mean something else. */
function targetsIn(text: string): string[] {
  const prose = text.replace(/```[\s\S]*?```/g, '').replace(/`[^`\n]*`/g, '')
  return [...prose.matchAll(/\]\(([^)\s]+)/g)].flatMap(([, target]) => (target ? [target] : []))
}

/** The name a heading gets as an anchor, by the rule most hosts of repositories share. */
function anchorsIn(text: string): string[] {
  return [...text.matchAll(/^#+ (.+)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, '')
      .trim()
      .replace(/\s/g, '-'),
  )
}

function isBroken(file: string, target: string): boolean {
  if (/^[a-z]+:/.test(target)) return false
  const [path = '', anchor] = target.split('#')
  const there = path ? join(dirname(file), decodeURIComponent(path)) : file
  if (!existsSync(there)) return true
  return Boolean(anchor) && there.endsWith('.md') && !anchorsIn(readFileSync(there, 'utf8')).includes(anchor ?? '')
}

const files = markdownUnder(root)

describe('documents', () => {
  it('are found at all', () => {
    expect(files.map((file) => relative(root, file))).toEqual(
      expect.arrayContaining([
        'README.md',
        'ARCHITECTURE.md',
        'CONTRIBUTING.md',
        'CHANGELOG.md',
        'docs/dependencies.md',
      ]),
    )
  })

  it.each(files.map((file) => [relative(root, file), file]))('%s links only to what exists', (_name, file) => {
    const targets = targetsIn(readFileSync(file, 'utf8'))
    expect(targets.filter((target) => isBroken(file, target))).toEqual([])
  })

  // The checker itself, on a link known to be broken and one known to be whole
  it('would notice a broken link', () => {
    const file = join(root, 'README.md')
    expect(['nowhere.md', '#no-such-heading', 'LICENSE', 'https://example.org'].map((t) => isBroken(file, t))).toEqual([
      true,
      true,
      false,
      false,
    ])
  })
})
