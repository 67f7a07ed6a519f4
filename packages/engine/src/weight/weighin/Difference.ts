import { WEAVE_SPREAD_SHARE } from "../../constants/cloths";
import { WEAVE_OPEN_SHARE } from "../../constants/coatFilms";
import type { Sourced } from "../../constants/Sourced";
import { SCALE_SPREAD_SHARE } from "../../constants/scale";
import { READING_SHARE } from "../../constants/scaleStep";
import { type Band, computeBand } from "../../layup/computeBand";
import type { CoatPlan, LayupPlan } from "../../layup/LayupPlan";
import type { Weighing } from "./readWeighings";
import type { WeighinBasis } from "./WeighinBoard";

const WORKED = /^(?:sand-|wet-sand|polish|set-boxes|set-leash-plug|vent|repair-)/;

/** Two readings one after the other, with what the plan laid on between them. */
export interface Difference {
  readonly from: Weighing;
  readonly to: Weighing;
  readonly coats: readonly CoatPlan[];
  /** Cloth of these coats by plan. */
  readonly clothKg: number;
  readonly plannedKeptKg: number;
  readonly scaleStepKg: number;
  /** Steps between that take something off the board, or put on what the plan does not weigh. */
  readonly worked: readonly string[];
  /** A laminate that is not trimmed yet; null where none is. */
  readonly untrimmed: string | null;
}

/** What a result of a difference hangs on. */
export interface DifferenceValues {
  readonly gainedKg: number;
  readonly keptKg: number;
  readonly clothKg: number;
  /** Open weave over the plan's. */
  readonly weaveShare: number;
  readonly extraShare: number;
}

export function makeDifference(
  layup: LayupPlan,
  steps: NonNullable<WeighinBasis["steps"]>,
  given: Pick<Difference, "from" | "to" | "coats" | "scaleStepKg">,
): Difference {
  const { from, to } = given;
  const between = steps.slice(from.at + 1, to.at + 1).map(({ id }) => id);
  const laminates = given.coats.flatMap(({ id, kind }) => (kind === "laminate" && id !== "boxes" ? id : []));
  const ids = new Set(given.coats.map(({ id }) => id));
  const pieces = layup.pieces.filter(({ coat }) => ids.has(coat));
  return {
    ...given,
    worked: between.filter((id) => WORKED.test(id)),
    untrimmed:
      layup.cutting === "rolled"
        ? (laminates.find((id) => !between.includes(id.replace("laminate-", "trim-"))) ?? null)
        : null,
    clothKg: pieces.reduce((sumKg, piece) => sumKg + piece.clothMassKg, 0),
    plannedKeptKg: given.coats.reduce((sumKg, coat) => sumKg + coat.keptMassKg, 0),
  };
}

/**
 * A number worked from a difference, with its band: each reading lies anywhere within half a step of the scale, both are off by the
 * same share, cloth may be heavier or lighter than it is sold as, and the weave more or less open.
 * @param extra one more share that the number hangs on, such as how thin a film runs at the place
 */
export function bandOfDifference(
  difference: Difference,
  model: (values: DifferenceValues) => number,
  extra: Sourced | Band = { value: 1, source: "convention" },
): Band {
  const halfKg = READING_SHARE.value * difference.scaleStepKg;
  const around = (value: number, half: number): Band => ({ value, low: value - half, high: value + half });
  return computeBand(
    {
      fromKg: around(difference.from.massKg, halfKg),
      toKg: around(difference.to.massKg, halfKg),
      scaleShare: around(1, SCALE_SPREAD_SHARE.value),
      clothShare: around(1, WEAVE_SPREAD_SHARE.value),
      weave: WEAVE_OPEN_SHARE,
      extraShare: extra,
    },
    ({ fromKg, toKg, scaleShare, clothShare, weave, extraShare }) => {
      const gainedKg = (toKg - fromKg) * scaleShare;
      const clothKg = difference.clothKg * clothShare;
      const weaveShare = weave / WEAVE_OPEN_SHARE.value;
      return model({ gainedKg, keptKg: gainedKg - clothKg, clothKg, weaveShare, extraShare });
    },
  );
}

/** Whether the difference is of coats alone: nothing cut or sanded off, no cloth hanging over. */
export function isOfCoatsAlone({ worked, untrimmed }: Difference): boolean {
  return worked.length === 0 && untrimmed === null;
}

/** A coat's term of that name, in kg; nought where it has none. */
export function termKg({ terms }: CoatPlan, id: CoatPlan["terms"][number]["id"]): number {
  return terms.find((term) => term.id === id)?.massKg ?? 0;
}
