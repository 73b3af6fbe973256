/** The server cannot start; the message is one sentence for the person who started it. */
export class StartRefused extends Error {
  override readonly name = 'StartRefused'
}

/** A server has the folder open already. */
export class FolderInUse extends StartRefused {}
