import type { Plan } from "@lapline/engine";
import type { SheetContext } from "../SheetContext";
import { tailStart } from "./tailStart";

type Finset = NonNullable<Plan["finset"]>;

/** What the fins are set out about, where the leash plug goes, and how long nothing may pull on either. */
export function finNotes(finset: Finset, context: SheetContext): readonly string[] {
  return [...lineNotes(finset, context), ...beforeCutNotes(context), ...plugNotes(finset, context)];
}

function lineNotes({ sides, line }: Finset, { ledger, t }: SheetContext): readonly string[] {
  const rules = {
    average: t`Both sides averaged, set out about the stringer.`,
    rail: t`Each side set out from its own rail; the line is the stringer.`,
    centreline: t`Both sides set out about the best-fit centreline, not the stringer.`,
  };
  if (sides !== "centreline") return [rules[sides]];
  const beside = (path: "atTailM" | "atNoseM") => {
    const figure = ledger.show(`finset.line.${path}`, "fine", true);
    return line[path] < 0
      ? t`${figure} to the right of the stringer`
      : t`${figure} to the left of the stringer`;
  };
  return [
    rules.centreline,
    t`Draw that line first: ${beside("atTailM")} at the tail tips, ${beside("atNoseM")} at the nose tip (left as the surfer stands).`,
  ];
}

const beforeCutNotes = ({ t }: SheetContext): readonly string[] => [
  t`Before the first cut: string, both diagonals, depth stop; LEFT and RIGHT named aloud.`,
];

function plugNotes({ leashPlug: plug, line }: Finset, { plan, ledger, t }: SheetContext): readonly string[] {
  if (plug === null) return [];
  const start = tailStart(line);
  const fromTail = ledger.show(`finset.leashPlug.${start.key}`, "tape");
  const fromLine = ledger.show("finset.leashPlug.fromCentrelineM", "tape");
  const side = plug.side === "left" ? t`left` : t`right`;
  const noLoad = ledger.show(noLoadPath(plan));
  return [
    t`Leash plug, on the deck, ${side}: ${fromTail} from the ${start.word}, ${fromLine} from the line.`,
    t`No load on it for ${noLoad}, or as the resin's sheet asks; then pull it straight up with the weight of ${ledger.show("finset.leashPlug.pullTestMassKg", "coarse")}.`,
  ];
}

/** By the steps, which know the resin's clock, as in the text; else the usual time of the fins' own part. */
const noLoadPath = ({ steps }: Plan): string =>
  typeof steps?.find(({ id }) => id === "leash-plug")?.noLoadS === "number"
    ? "steps[leash-plug].noLoadS"
    : "finset.leashPlug.cureBeforeLoadS";
