import { fileURLToPath } from 'node:url'

/** The checkout's folder, wherever the command was called from. */
export const root = fileURLToPath(new URL('../../', import.meta.url))
