import type { Finding, Plan } from "@lapline/engine";
import { type Reader, tell } from "@lapline/present";

/** The parts of the build, in its order; each is a part of the page. */
export const PARTS = [
  { id: "measure", name: "Measure", stages: ["survey", "shape", "section", "order"] },
  { id: "fins", name: "Fins", stages: ["fins", "finset"] },
  { id: "glass", name: "Glass", stages: ["glass", "blank", "layup", "weight", "weighins", "cost"] },
  { id: "cut", name: "Cut", stages: ["cutplan"] },
  { id: "mix", name: "Mix", stages: ["mix", "shop"] },
  { id: "sand", name: "Sand", stages: ["sanding"] },
  { id: "seal", name: "Seal", stages: ["seal", "repair"] },
  { id: "water", name: "Water", stages: ["water", "steps", "record", "calendar"] },
] as const;

export type PartId = (typeof PARTS)[number]["id"];

/** The part of the page that a finding belongs to: by its code, or else by the field it concerns; the last if neither is known. */
export function partOf(finding: Finding): PartId {
  const [byCode, byPath] = [finding.code, finding.path].map((name) => {
    const [head = ""] = name.split(/[.[]/);
    return PARTS.find((part) => part.stages.some((stage) => stage === head));
  });
  return (byCode ?? byPath)?.id ?? "water";
}

/** What stands by a part on the build line, in a word or two; nothing where all is well. */
export function partState(plan: Plan, id: PartId, reader: Reader): string {
  const t = tell(reader);
  const own = plan.findings.filter((finding) => partOf(finding) === id);
  if (own.some((finding) => finding.severity === "blocker")) return t`stopped`;
  const warnings = own.filter((finding) => finding.severity === "warning").length;
  if (warnings > 0) return warnings === 1 ? t`1 to look at` : t`${warnings} to look at`;
  return "";
}
