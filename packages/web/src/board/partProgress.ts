import type { Plan } from "@lapline/engine";
import { type Reader, tell, wallTimeWords } from "@lapline/present";
import { nextStep } from "./nextStep";
import { PARTS, type PartId, partOf } from "./parts";

export interface PartProgress {
  readonly kind: "done" | "now" | "waiting";
  /** When its first step that is still to do can begin; null where no time is known. */
  readonly from: string | null;
}

type Step = NonNullable<Plan["steps"]>[number];

/** The steps of each part that are marked off at the bench; cloth is cut by when it is laid, cups are mixed by when they are spread. */
const STEPS_OF: Readonly<Record<Exclude<PartId, "measure">, (step: Step) => boolean>> = {
  fins: ({ id }) => /^(mark-fins|set-boxes|boxes|set-leash-plug|leash-plug)$/.test(id),
  glass: ({ id }) => /^(prep|logos|(seal|mask|laminate|trim|laps|fill)-.+)$/.test(id),
  cut: ({ id }) => /^laminate-/.test(id),
  mix: ({ coat }) => coat !== null,
  sand: ({ id }) => /^(sand-.+|wet-sand|polish)$/.test(id),
  seal: ({ id }) => /^(repair-.+|vent|pinline|gloss-.+|boxes|leash-plug)$/.test(id),
  water: ({ id }) => /^(cure-out|water)$/.test(id),
};

/** The part where a step is done, where it belongs to several. */
const AT_THE_BENCH: readonly PartId[] = ["fins", "glass", "sand", "seal", "water"];

/** How far each part of the build is, by the plan and the record: done, now, or when it can begin. */
export function partProgress(plan: Plan): ReadonlyMap<PartId, PartProgress> {
  const now = partNow(plan);
  return new Map(
    PARTS.map(({ id }): [PartId, PartProgress] => {
      if (id === "measure") return [id, { kind: now === id ? "now" : "done", from: null }];
      const steps = (plan.steps ?? []).filter(STEPS_OF[id]);
      const open = steps.filter(({ done }) => !done);
      const from = firstStart(plan, open);
      if (now === id) return [id, { kind: "now", from }];
      const isClosed = plan.steps !== null && open.length === 0 && (id !== "seal" || !plan.water.barred);
      return [id, isClosed ? { kind: "done", from: null } : { kind: "waiting", from }];
    }),
  );
}

/** Where the next step is done; null once all is. */
function partNow(plan: Plan): PartId | null {
  const isStopped = plan.findings.some(
    (finding) => finding.severity === "blocker" && partOf(finding) === "measure",
  );
  if (plan.shape === null || isStopped) return "measure";
  const next = nextStep(plan);
  if (next === null) return plan.steps === null ? "glass" : null;
  return AT_THE_BENCH.find((id) => id !== "measure" && STEPS_OF[id](next)) ?? "glass";
}

function firstStart({ calendar }: Plan, open: readonly Step[]): string | null {
  const entry = calendar?.find(
    ({ step, startsAt }) => startsAt !== null && open.some(({ id }) => id === step),
  );
  return entry?.startsAt ?? null;
}

/** The same in a word or two. */
export function progressWords({ kind, from }: PartProgress, reader: Reader): string {
  const t = tell(reader);
  if (kind === "done") return t`done`;
  if (kind === "now") return t`now`;
  if (from === null) return t`waiting`;
  const { shortDay, clock } = wallTimeWords(from, reader);
  return t`from ${shortDay}, ${clock}`;
}
