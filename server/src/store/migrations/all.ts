import { book } from './0001-book.ts'
import { photos } from './0002-photos.ts'
import { clocks } from './0003-clocks.ts'
import { letterhead } from './0004-letterhead.ts'
import type { Migration } from './migration.ts'

/** Append-only: a migration that has left the house is never changed. */
export const migrations: readonly Migration[] = [book, photos, clocks, letterhead]
