const { devDependencies } = require('./package.json')

/** Who may import whom. What is not named here is forbidden; arrows run one way. */
const arrows = {
  engine: [],
  trade: ['engine'],
  drawing: ['trade', 'engine'],
  contract: ['trade', 'engine'],
  server: ['contract', 'drawing', 'trade', 'engine'],
  cli: ['server', 'contract', 'trade', 'engine'],
  web: ['contract', 'drawing', 'trade', 'engine'],
  e2e: ['contract', 'trade', 'engine'],
  benchmarks: ['contract', 'trade', 'engine'],
}
const rooms = Object.keys(arrows)
const pure = ['engine', 'trade', 'drawing', 'contract']
const testFile = '\\.test\\.tsx?$'
const toolsOfTests = Object.keys(devDependencies).map((name) => `node_modules/${name}/`)

const roomRules = rooms.map((room) => {
  const forbidden = rooms.filter((other) => other !== room && !arrows[room].includes(other))
  return {
    name: `${room}-imports-only-below`,
    comment: `${room} may import ${arrows[room].join(', ') || 'no other room'}`,
    severity: 'error',
    from: { path: `^${room}/` },
    to: { path: `^(${forbidden.join('|')})/`, pathNot: 'node_modules/' },
  }
})

module.exports = {
  forbidden: [
    ...roomRules,
    {
      name: 'no-cycles',
      comment: 'Files that import each other in a ring can only be understood all at once',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'pure-rooms-touch-no-machine',
      comment: 'engine, trade, drawing and contract run in a browser too: no disk, network or clock of Node',
      severity: 'error',
      from: { path: `^(${pure.join('|')})/`, pathNot: testFile },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'pages-touch-no-machine',
      comment: 'web runs in a browser',
      severity: 'error',
      from: { path: '^web/src/', pathNot: testFile },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'declared-dependencies-only',
      comment:
        "A package hoisted from another room works until that room drops it: declare it in this room's package.json",
      severity: 'error',
      from: { path: `^(${rooms.join('|')})/`, pathNot: `${testFile}|/(vite|vitest)\\.config\\.ts$` },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown', 'npm-dev'] },
    },
    {
      name: 'tests-use-declared-tools',
      comment: "A test may use its room's packages and the tools in the root package.json",
      severity: 'error',
      from: { path: `(${testFile})|/(vite|vitest)\\.config\\.ts$` },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'], pathNot: toolsOfTests },
    },
    {
      name: 'nothing-unresolvable',
      comment: 'An import that leads nowhere',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'no-tests-in-the-product',
      comment: 'What runs at the bench does not import tests',
      severity: 'error',
      from: { pathNot: testFile },
      to: { path: testFile },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist(\\.new)?/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    combinedDependencies: false,
    // The oldest Node that is supported doesn't list it among its own modules
    builtInModules: { add: ['node:sqlite'] },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'browser', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
    },
  },
}
