import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

const rooms = ['engine', 'trade', 'drawing', 'contract', 'server', 'cli', 'web']
const inRooms = (suffix: string) => rooms.map((room) => `${room}/**/*${suffix}`)
const never = ['**/node_modules/**', '**/dist/**', '**/dist.new/**']

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: [...inRooms('.test.{ts,tsx}'), 'scripts/**/*.test.ts'],
          exclude: [...never, '**/*.peer.test.ts', '**/*.kill.test.ts'],
          // A processor is left to others only where there are more than two.
          maxWorkers: Math.max(2, availableParallelism() - 1),
        },
      },
      {
        test: {
          name: 'e2e',
          include: ['e2e/**/*.test.ts'],
          exclude: [...never, '**/*.peer.test.ts', '**/*.kill.test.ts'],
          // Two browsers with their servers at a time: one waits while the other works.
          maxWorkers: 2,
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
      {
        test: {
          name: 'peer',
          include: ['**/*.peer.test.ts'],
          exclude: never,
          testTimeout: 300_000,
          hookTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'kill',
          include: ['**/*.kill.test.ts'],
          exclude: never,
          fileParallelism: false,
          testTimeout: 900_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
