import type { Phrase } from "../../foundation/phrase";
import { checkMadeFor } from "./checkMadeFor";
import { CHECK_TITLES } from "./checkTitles";
import type { MadeFor } from "./MadeFor";
import type { ConfirmedInput } from "./VerifyInput";
import type {
  AngleReadingPlan,
  LengthReadingPlan,
  MadeForPlan,
  VerifyCheckPlan,
  VerifyCorrectionPlan,
} from "./VerifyPlan";
import { judgeReadings } from "./VerifyReading";
import { findLatest } from "./VerifyRequest";

/** A check of the gate, with what is to be said where it is out. */
export interface VerifyCheck {
  readonly plan: VerifyCheckPlan;
  /** Null where it is not out, or where a finding says so already. */
  readonly says: Phrase | null;
  /** Why what was made or read for it does not count; null where it does, or where nothing was. */
  readonly stale: Phrase | null;
}

/** What a check is called, and at which fin it is made. */
export type CheckOf = Pick<VerifyCheckPlan, "id" | "matter" | "how"> &
  Partial<Pick<VerifyCheckPlan, "fin" | "side" | "from" | "required">> & { readonly madeFor?: MadeFor };

/** Something to be seen and confirmed. */
export function buildSeen(what: CheckOf, confirmed: readonly ConfirmedInput[]): VerifyCheck {
  const made = findLatest(confirmed, ({ check }) => check === what.id);
  const stale = made === undefined ? null : checkMadeFor(what.madeFor ?? null, made.madeFor);
  const state = made !== undefined && stale === null ? "good" : "open";
  return {
    plan: fill(what, { kind: "check", state, lengths: [], angles: [], correction: null }),
    says: null,
    stale,
  };
}

/** A reading, unless it was taken for other figures than the plan's; one that does not say for which counts by its figure. */
export function takeReading<T extends { readonly madeFor?: MadeFor }>(
  { madeFor }: CheckOf,
  reading: T | undefined,
): { readonly counts: T | undefined; readonly stale: Phrase | null } {
  const stale = reading?.madeFor === undefined ? null : checkMadeFor(madeFor ?? null, reading.madeFor);
  return { counts: stale === null ? reading : undefined, stale };
}

interface Readings {
  readonly lengths?: readonly LengthReadingPlan[];
  readonly angles?: readonly AngleReadingPlan[];
  readonly stale?: Phrase | null;
  /** What brings it right, and in what words; asked only where it is out. */
  readonly cure: () => {
    readonly correction: Partial<VerifyCorrectionPlan> | null;
    readonly says: Phrase | null;
  };
}

/** Something to be read and held against its target. */
export function buildReading(
  what: CheckOf,
  { lengths = [], angles = [], stale = null, cure }: Readings,
): VerifyCheck {
  const state = judgeReadings(lengths, angles);
  const { correction, says } = state === "out" ? cure() : { correction: null, says: null };
  const whole = correction && { ...NO_CHANGE, ...correction };
  return { plan: fill(what, { kind: "reading", state, lengths, angles, correction: whole }), says, stale };
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

const HANGS_ON_NONE: MadeForPlan = {
  on: null,
  lengthM: null,
  widthM: null,
  depthM: null,
  cantRad: null,
  baseM: null,
};

function fill(
  { id, matter, how, fin = null, side = null, from = null, required = true, madeFor }: CheckOf,
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
    from,
    required,
    madeFor: madeFor === undefined ? null : { ...HANGS_ON_NONE, ...madeFor },
    state,
    lengths,
    angles,
    correction,
  };
}
