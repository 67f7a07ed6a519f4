/** A place on the roll in metres: along it from its free end, across it from the edge at the right hand. */
export interface RollPoint {
  readonly alongM: number;
  readonly acrossM: number;
}

/** One piece to cut, anywhere, in whatever ways it may be turned. */
export interface NestPiece {
  /** Told apart within the order: `five-ten-quad deck-1`. */
  readonly id: string;
  /** Its flat edge, once round without crossing itself. */
  readonly points: readonly RollPoint[];
  /** How it may be turned from there; one at least. */
  readonly turnsRad: readonly number[];
}

/** Everything that is cut from one roll. */
export interface NestOrder {
  readonly cloth: string;
  readonly widthM: number;
  /** Left between two pieces for the shears. */
  readonly gapM: number;
  readonly pieces: readonly NestPiece[];
}

/** How long to look. The same order and search give the same lay, on any machine. */
export interface NestSearch {
  readonly seed: number;
  /** How many times a piece is laid down in all; the search ends there. */
  readonly layings: number;
}

export interface NestedPiece {
  readonly id: string;
  readonly turnRad: number;
  readonly points: readonly RollPoint[];
}

/** How the pieces lie on the roll, and how good that is. */
export interface NestLay {
  readonly cloth: string;
  readonly widthM: number;
  readonly lengthM: number;
  readonly areaM2: number;
  readonly usedRatio: number;
  readonly placed: readonly NestedPiece[];
  /** No lay can be shorter. */
  readonly boundM: number;
  /** One piece after another by their boxes, each turned to be shortest. */
  readonly boxesM: number;
}

export interface NestProgress {
  /** Layings made and to be made. */
  readonly made: number;
  readonly of: number;
  readonly best: NestLay;
}
