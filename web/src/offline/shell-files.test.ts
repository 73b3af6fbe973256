import { expect, test } from 'vitest'
import { fillShell, shellFiles } from './shell-files.ts'

test('the shell is every built file but the worker and maps, the page as /', () => {
  expect(shellFiles(['sw.js', 'index.html', 'assets/b-1.css', 'assets/a-2.js', 'assets/a-2.js.map'])).toEqual([
    '/',
    '/assets/a-2.js',
    '/assets/b-1.css',
  ])
})

test('the list is written into the worker, and a worker without a place for it is refused', () => {
  const filled = fillShell('const shell = globalThis.legworkShell', { name: 'n', files: ['/'] })
  expect(filled).toBe('const shell = ({"name":"n","files":["/"]})')
  expect(() => fillShell('const shell = 1', { name: 'n', files: [] })).toThrow('legworkShell')
})
