/** What went wrong in one sentence for the person at the keyboard; anything else is a fault of ours and keeps its stack. */
export class Trouble extends Error {}
