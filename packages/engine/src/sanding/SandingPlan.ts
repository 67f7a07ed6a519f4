/** What sanding leaves of the film, place by place, and the papers that take the rest. */
export interface SandingPlan {
  /** By place; ranked by the chance of going through. */
  readonly zones: readonly SandZonePlan[];
  /** Coarse to fine. */
  readonly grits: readonly GritPlan[];
  /** Hands-on time of the sanding steps. */
  readonly work: readonly SandWorkPlan[];
  /** Along both rails, tail to nose. */
  readonly places: readonly RailPlacePlan[];
  /** The least film left along the rails; null where no rail is known. */
  readonly worst: WorstPlan | null;
  /** Smoother than this gains no speed by the book: 100 ν/U. */
  readonly admissibleRoughnessM: number;
  /** The first grade whose grain is no coarser than that. */
  readonly enoughFrom: string;
}

export type SandRisk = "through" | "thin" | "enough";

export interface SandZonePlan {
  readonly id: string;
  /** Where along a rail it is thinnest, which its numbers stand for; null for other zones. */
  readonly fromTailM: number | null;
  /** Fill and gloss film before any paper. */
  readonly filmM: number;
  readonly filmLowM: number;
  readonly filmHighM: number;
  readonly filmBy: "plan" | "weigh-in" | "gauge";
  /** Taken by all papers, an uneven hand with it. */
  readonly takenM: number;
  readonly takenLowM: number;
  readonly takenHighM: number;
  /** Film less what is taken; below nought the glass is cut. */
  readonly remainingM: number;
  readonly remainingLowM: number;
  readonly remainingHighM: number;
  /** The thinnest that it gets on the way: before the gloss coat where there is one, else at the end. */
  readonly leastM: number;
  readonly leastLowM: number;
  readonly leastHighM: number;
  /** Radius of the edge; null on flats. */
  readonly radiusM: number | null;
  /** How often in all such boards the film is gone here, by the bands. */
  readonly throughShare: number;
  readonly risk: SandRisk;
  /** One for the place that goes through first. */
  readonly rank: number;
  /** Paper by paper; what they take adds up to `takenM`. */
  readonly ledger: readonly LedgerPlan[];
}

export interface LedgerPlan {
  readonly grit: string;
  readonly takenM: number;
  readonly leftM: number;
}

export interface GritPlan {
  /** The same as `grit`. */
  readonly id: string;
  readonly grit: string;
  readonly grainM: number;
  /** The US grade of about the same grain; null where there is none. */
  readonly us: string | null;
  readonly on: "fill" | "gloss";
  readonly wet: boolean;
  /** Rails, laps and ends too, by hand; the coarsest paper stays off them. */
  readonly onEdges: boolean;
  /** Goes off a flat under an even hand: the scratches of the paper before, or what levels the coat. */
  readonly removesM: number;
  readonly removesLowM: number;
  readonly removesHighM: number;
  /** Depth of the scratches that it leaves. */
  readonly scratchM: number;
  readonly scratchLowM: number;
  readonly scratchHighM: number;
  readonly passes: number;
  readonly handsOnS: number;
  readonly handsOnLowS: number;
  readonly handsOnHighS: number;
  /** Of it along rails, laps and ends by hand; nought for a paper that stays off them, and wet, where all is gone over in one. */
  readonly railsS: number;
  /** To buy: discs for the machine, sheets for the hand. */
  readonly discs: number;
  readonly sheets: number;
}

export interface SandWorkPlan {
  /** The step: `sand-bottom`, `sand-deck`, `wet-sand`. */
  readonly id: string;
  readonly handsOnS: number;
  readonly handsOnLowS: number;
  readonly handsOnHighS: number;
}

export interface RailPlacePlan {
  /** `left-1`, counted from the tail. */
  readonly id: string;
  readonly side: "left" | "right";
  readonly fromTailM: number;
  readonly radiusM: number;
  readonly filmM: number;
  readonly takenM: number;
  readonly remainingM: number;
}

export interface WorstPlan {
  readonly place: string;
  readonly side: "left" | "right";
  readonly fromTailM: number;
  readonly remainingM: number;
}
