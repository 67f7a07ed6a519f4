import type { CautionId } from "../../constants/cautions";
import type { Surface } from "../../constants/finSetting";
import { buildBaseChecks, buildBoxChecks, buildCantChecks } from "./boxChecks";
import { buildBoxSettings } from "./buildBoxSettings";
import { buildGlassedOn } from "./buildGlassedOn";
import { buildDiagonalChecks } from "./diagonalChecks";
import { buildMarkChecks, buildSidesChecks } from "./markChecks";
import { buildPositionChecks, buildTapeCheck } from "./positionChecks";
import { buildStringChecks } from "./stringChecks";
import { usualSurface } from "./usualSurface";
import type { VerifyCheck } from "./VerifyCheck";
import type { VerifyCheckPlan, VerifyPlan } from "./VerifyPlan";
import type { VerifyRequest } from "./VerifyRequest";

/**
 * Gives the stop before the router: every check in its order, what was read of it against its target, how each box is let in,
 * and whether to go.
 */
export function buildVerify(request: VerifyRequest): {
  readonly value: VerifyPlan;
  readonly checks: readonly VerifyCheck[];
} {
  const { boxes, marks, read } = request;
  const surface = read.on ?? usualSurface(boxes);
  const settings = buildBoxSettings(marks, surface, boxes);
  const { confirmed = [] } = read;
  const checks = [
    ...buildPositionChecks(confirmed),
    ...buildStringChecks(request),
    ...buildDiagonalChecks(request),
    ...buildMarkChecks(request),
    ...buildSidesChecks(request),
    ...buildCantChecks(request),
    ...(boxes === "glassed-on"
      ? buildBaseChecks(request)
      : [...buildBoxChecks(request, surface, settings), buildTapeCheck(confirmed)]),
  ];
  const plans = checks.map(({ plan }) => plan);
  return {
    value: {
      ...(request.isBlocked ? BLOCKED : decide(plans)),
      surface,
      checks: plans,
      boxes: settings,
      glassedOn: buildGlassedOn(marks, boxes),
      cautions: CAUTIONS_AT[boxes === "glassed-on" ? "glassed-on" : surface],
    },
    checks,
  };
}

const CAUTIONS_AT: Readonly<Record<Surface | "glassed-on", readonly CautionId[]>> = {
  foam: ["mark-and-verify", "router", "foam-dust", "sheet"],
  laminate: ["mark-and-verify", "router", "glass-dust", "sheet"],
  fill: ["mark-and-verify", "router", "glass-dust", "sheet"],
  "glassed-on": ["mark-and-stand", "glass-dust", "sheet"],
};

type Verdict = Pick<VerifyPlan, "verdict" | "next">;
const BLOCKED: Verdict = { verdict: "blocked", next: null };

function decide(checks: readonly VerifyCheckPlan[]): Verdict {
  const out = checks.find(({ state }) => state === "out");
  if (out !== undefined) return { verdict: "correct", next: out.id };
  const open = checks.find(({ state, required }) => required && state === "open");
  return open === undefined ? { verdict: "go", next: null } : { verdict: "open", next: open.id };
}
