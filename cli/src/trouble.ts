/** What went wrong, in one sentence for the person at the keyboard. */
export class Trouble extends Error {}
