/** What a command may touch of the world around it; the tests hand in their own. */
export interface Terminal {
  /** Standard input, read to its end. */
  readonly input: AsyncIterable<Uint8Array>;
  /** Results. */
  print(text: string): void;
  /** Messages. */
  tell(text: string): void;
  /** A line that each next one takes the place of, on a terminal where somebody watches; nothing clears it. */
  showProgress?(text: string): void;
  /** The moment, for what is dated; nothing below the commands asks for it. */
  now(): Date;
  /** Resolves when the person asks the program to stop. */
  stopAsked(): Promise<void>;
}

/** 0: done. 1: done, with a blocker among the findings. 2: the input or the words were not understood, nothing written. */
export type ExitCode = 0 | 1 | 2;
