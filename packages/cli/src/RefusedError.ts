/** The words or the input were not understood; the message says what was read and what would be right. */
export class RefusedError extends Error {}
