import type { Phrase } from "../../foundation/phrase";
import { CHECK_TITLES } from "./checkTitles";
import type {
  AngleReadingPlan,
  LengthReadingPlan,
  VerifyCheckPlan,
  VerifyCorrectionPlan,
} from "./VerifyPlan";
import { judgeReadings } from "./VerifyReading";

/** A check of the gate, with what is to be said where it is out. */
export interface VerifyCheck {
  readonly plan: VerifyCheckPlan;
  /** Null where it is not out, or where a finding says so already. */
  readonly says: Phrase | null;
}

/** What a check is called, and at which fin it is made. */
export type CheckOf = Pick<VerifyCheckPlan, "id" | "matter" | "how"> &
  Partial<Pick<VerifyCheckPlan, "fin" | "side" | "required">>;

/** Something to be seen and confirmed. */
export function buildSeen(what: CheckOf, confirmed: readonly string[]): VerifyCheck {
  const state = confirmed.includes(what.id) ? "good" : "open";
  return {
    plan: fill(what, { kind: "check", state, lengths: [], angles: [], correction: null }),
    says: null,
  };
}

interface Readings {
  readonly lengths?: readonly LengthReadingPlan[];
  readonly angles?: readonly AngleReadingPlan[];
  /** What brings it right, and in what words; asked only where it is out. */
  readonly cure: () => {
    readonly correction: Partial<VerifyCorrectionPlan> | null;
    readonly says: Phrase | null;
  };
}

/** Something to be read and held against its target. */
export function buildReading(what: CheckOf, { lengths = [], angles = [], cure }: Readings): VerifyCheck {
  const state = judgeReadings(lengths, angles);
  const { correction, says } = state === "out" ? cure() : { correction: null, says: null };
  const whole = correction && { ...NO_CHANGE, ...correction };
  return { plan: fill(what, { kind: "reading", state, lengths, angles, correction: whole }), says };
}

const NO_CHANGE: VerifyCorrectionPlan = {
  end: "none",
  alongM: 0,
  trailingAcrossM: 0,
  leadingAcrossM: 0,
  cantRad: 0,
  deeperM: 0,
};

type Found = Pick<VerifyCheckPlan, "kind" | "state" | "lengths" | "angles" | "correction">;

function fill(
  { id, matter, how, fin = null, side = null, required = true }: CheckOf,
  { kind, state, lengths, angles, correction }: Found,
): VerifyCheckPlan {
  return {
    id,
    kind,
    matter,
    title: CHECK_TITLES[matter],
    how,
    fin,
    side,
    required,
    state,
    lengths,
    angles,
    correction,
  };
}
