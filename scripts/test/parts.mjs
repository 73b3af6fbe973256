import { layers, roomTypes, style, types, unused } from './checks.mjs'
import { otherNode } from './other-node.mjs'
import { suite } from './suite.mjs'
import { needPrograms } from './system-packages.mjs'

const browser = { chromium: 'chromium', pdftotext: 'poppler-utils', pdffonts: 'poppler-utils' }
const papers = { pdftotext: 'poppler-utils', pdffonts: 'poppler-utils' }

/** Every part by the name it is asked for on the command line. */
export const parts = {
  style: { about: 'format and lint', run: style },
  types: { about: 'the whole tree compiles, tests included', run: types },
  rooms: { about: 'each room compiles under its own settings', run: roomTypes },
  layers: { about: 'arrows between rooms, rings, undeclared packages', run: layers },
  unused: { about: 'files, exports and packages nobody uses', run: unused },
  unit: {
    about: 'tests beside their subjects; the store on every database there is',
    run: async () => {
      await needPrograms(papers)
      return suite('unit')
    },
  },
  e2e: {
    about: 'a real browser on the real server',
    run: async () => {
      await needPrograms(browser)
      return suite('e2e')
    },
  },
  store: {
    about: 'the store and the deliveries, on every database there is',
    run: () =>
      suite('unit', [
        'server/src/store',
        'server/src/app.test.ts',
        'server/src/routes/photos.test.ts',
        'server/src/records',
      ]),
  },
  kill: {
    about: 'the server killed while it is written to',
    run: async () => {
      await needPrograms({ strace: 'strace' })
      return suite('kill')
    },
  },
  peer: { about: 'the same questions put to independent programs', run: () => suite('peer') },
  property: {
    about: 'the calculations under a great many drawn inputs',
    run: () => suite('unit', ['engine/src', 'contract/src/calculations']),
  },
  press: { about: 'press tests on drawn forks, cell by cell', run: () => suite('unit', ['engine/acceptance']) },
  model: {
    about: 'a server and two stations told many chance stories (LEGWORK_MODEL_RUNS)',
    run: () => suite('unit', ['server/src/model']),
  },
  node24: { about: 'start, calc and the store on Node 24', run: () => otherNode('24') },
}

/** What `npm test` runs; the rest takes long or needs more of the machine, and `.ci/run` asks for it. */
export const usual = ['style', 'types', 'rooms', 'layers', 'unused', 'unit', 'e2e']
