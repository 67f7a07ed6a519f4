/** How far a coat, or bare foam, must have come before a step may begin. */
export type Until = "hands-off" | "dry" | "trim" | "flip" | "recoat" | "sandable";

export interface CalendarNeed {
  readonly step: string;
  readonly until: Until;
  /** From the hands' going off, as the steps reckon it for a coat begun in the morning; null where not known. */
  readonly waitS: number | null;
}

/** One step as the calendar sees it. */
export interface CalendarTask {
  readonly id: string;
  readonly needs: readonly CalendarNeed[];
  readonly handsOnS: number;
  /** The coat by whose clock it cures; null for work, which may be laid down overnight. */
  readonly cures: string | null;
  /** The coat that it lays; null for work. */
  readonly coat: string | null;
  /** How long it bears no load after its hands are off; null where it holds nothing. */
  readonly noLoadS: number | null;
  readonly done: boolean;
  /** Local wall time; null where the record names none, and for what is still to do. */
  readonly doneAt: string | null;
}
