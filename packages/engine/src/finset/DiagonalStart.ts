/** Where a check diagonal starts: the nose tip, the tail's middle, or the crotch of a swallow tail. */
export type DiagonalStart = "nose" | "tail" | "crotch";
