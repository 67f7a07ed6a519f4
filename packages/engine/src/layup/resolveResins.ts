import type { Foam } from "../constants/foams";
import { FOAM_KINDS } from "../constants/foams";
import type { Resin } from "../constants/Resin";
import { listNearest } from "../foundation/findNearest";
import { say } from "../foundation/phrase";
import { quoteText } from "../foundation/quoteText";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import { assume } from "../sources/assume";
import type { GlassInput } from "./GlassInput";
import type { ChosenResin, ResinChoice, ResinUse } from "./Schedule";

const USES: readonly ResinUse[] = ["laminate", "fill", "gloss", "box"];

interface Named {
  readonly id: string;
  readonly path: string;
}

/**
 * Which resin goes where. A coat that names none takes the laminate's, and the plan says so; without a laminating resin there is
 * no plan. Styrene on polystyrene foam is refused in laminate, fill and box (known chemistry, common practice, no source).
 */
export function resolveResins(
  glass: GlassInput,
  foam: Foam | null,
  resins: Readonly<Record<string, Resin>>,
): Stage<ResinChoice> {
  const laminate = nameResin(glass, "laminate");
  if (laminate === null) {
    const says = say`say which resin: ${Object.keys(resins).join(", ")}`;
    return {
      value: null,
      findings: [finding("blocker", "layup.no-resin", "glass.resin", says)],
      assumptions: [],
    };
  }
  const named = USES.map((use) => ({ use, resin: nameResin(glass, use) ?? laminate }));
  const unknown = distinctPaths(named.filter(({ resin }) => !Object.hasOwn(resins, resin.id))).map(
    ({ resin }) => unknownResin(resin, Object.keys(resins)),
  );
  if (unknown.length > 0) return { value: null, findings: unknown, assumptions: [] };
  const choose = (use: ResinUse): ChosenResin => {
    const resin = nameResin(glass, use) ?? laminate;
    return { ...resin, resin: resins[resin.id]! };
  };
  const chosen: ResinChoice = {
    laminate: choose("laminate"),
    fill: choose("fill"),
    gloss: choose("gloss"),
    box: choose("box"),
  };
  const dissolving = foam === null ? [] : checkStyreneOnFoam(chosen, foam);
  return {
    value: dissolving.length > 0 ? null : chosen,
    findings: [...dissolving, ...checkOverEpoxy(chosen, glass), ...checkBoxResins(glass)],
    assumptions: listTaken(glass, laminate),
  };
}

function nameResin(glass: GlassInput, use: ResinUse): Named | null {
  if (use === "box" && glass.boxResin !== undefined) return { id: glass.boxResin, path: "glass.boxResin" };
  if (glass.resin === undefined) return null;
  if (typeof glass.resin === "string") return { id: glass.resin, path: "glass.resin" };
  const id = glass.resin[use];
  return id === undefined ? null : { id, path: `glass.resin.${use}` };
}

function listTaken(glass: GlassInput, laminate: Named): Assumption[] {
  return USES.filter(
    (use) => nameResin(glass, use) === null && !(use === "gloss" && glass.finish !== "gloss"),
  ).map((use) =>
    assume(
      `glass.resin.${use}`,
      say`${laminate.id}`,
      "the laminating resin, as no other was named",
      "convention",
    ),
  );
}

function unknownResin({ id, path }: Named, known: readonly string[]): Finding {
  const near = listNearest(id, known).join(", ");
  return finding(
    "blocker",
    "layup.unknown-resin",
    path,
    say`no resin ${quoteText(id)} is known; known are ${near}`,
  );
}

function checkStyreneOnFoam(chosen: ResinChoice, foam: Foam): Finding[] {
  const kind = FOAM_KINDS[foam.kind];
  if (!kind.dissolvesInStyrene) return [];
  const touching = (["laminate", "fill", "box"] as const)
    .map((use) => ({ use, resin: chosen[use] }))
    .filter(({ resin }) => resin.resin.dissolvesPolystyrene);
  return distinctPaths(touching).map(({ resin }) => {
    const says = say`the styrene in ${resin.resin.name} dissolves ${kind.name}, and so does acetone: not in laminate, fill, box or repair. Choose epoxy, and go by its data sheet`;
    return finding("blocker", "layup.styrene-on-foam", resin.path, says);
  });
}

function checkOverEpoxy(chosen: ResinChoice, glass: GlassInput): Finding[] {
  if (chosen.laminate.resin.kind !== "two-part") return [];
  const coats = glass.finish === "gloss" ? (["fill", "gloss"] as const) : (["fill"] as const);
  return distinctPaths(
    coats.map((use) => ({ use, resin: chosen[use] })).filter(({ resin }) => resin.resin.kind !== "two-part"),
  ).map(({ resin }) => {
    const says = say`${resin.resin.name} cures and bonds poorly over epoxy: use epoxy here too, or try it on a scrap first`;
    return finding("warning", "layup.polyester-over-epoxy", resin.path, says);
  });
}

function checkBoxResins(glass: GlassInput): Finding[] {
  if (glass.boxResin === undefined || typeof glass.resin !== "object") return [];
  if (glass.resin.box === undefined || glass.resin.box === glass.boxResin) return [];
  const says = say`two resins are named for the boxes: ${quoteText(glass.boxResin)} is taken, ${quoteText(glass.resin.box)} is not`;
  return [finding("warning", "layup.two-box-resins", "glass.boxResin", says)];
}

function distinctPaths<T extends { readonly resin: Named | ChosenResin }>(list: readonly T[]): T[] {
  return list.filter((item, i) => list.findIndex((other) => other.resin.path === item.resin.path) === i);
}
