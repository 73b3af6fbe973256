import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { cleanEnvironment } from '../prepare/install.mjs'
import { root } from '../prepare/root.mjs'

/** A tool of node_modules, started through Node: no shell, and no `.bin` that differs from system to system. */
export const tools = {
  biome: 'node_modules/@biomejs/biome/bin/biome',
  tsc: 'node_modules/typescript/bin/tsc',
  depcruise: 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs',
  knip: 'node_modules/knip/bin/knip.js',
  vitest: 'node_modules/vitest/vitest.mjs',
}

/** Runs a program to its end in the checkout; its lines go to ours unless `capture` asks for them. */
export function run(command, args, { environment = {}, capture = false, input, limitMs } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...cleanEnvironment(), ...environment },
      stdio: [input === undefined ? 'ignore' : 'pipe', capture ? 'pipe' : 'inherit', 'inherit'],
      timeout: limitMs,
    })
    let output = ''
    child.stdout?.setEncoding('utf8').on('data', (text) => {
      output += text
    })
    child.stdin?.end(input)
    child.on('error', (error) => reject(new Error(`${command} could not be started: ${error.code}`)))
    child.on('close', (code) => resolve({ code: code ?? 1, output }))
  })
}

export function runTool(name, args, options) {
  return run(process.execPath, [join(root, tools[name]), ...args], options)
}
