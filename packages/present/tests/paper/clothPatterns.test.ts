import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { type Plan, planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { buildTemplate, pickPart, type Template, templatePdf } from "../../src/paper";
import { joinPages } from "./joinPages";
import { readPdf } from "./readPdf";

/** The figure that the fin marks are held to. */
const WITHIN_MM = 0.2;
const EXACT_MM = 0.01;
const THICK_MM = 0.5;
const MADE_ON = { instant: new Date(Date.UTC(2026, 3, 11, 9)), date: "2026-04-11" };
const BIAS = {
  face: "deck",
  cloth: "e-136",
  fromTail: "200 mm",
  to: "600 mm",
  width: "250 mm",
  angle: "30 deg",
};

type Pattern = NonNullable<Plan["layup"]>["patterns"][number];
type Part = Template["parts"][number];

function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error("expected a value");
  return value;
}

function planOf(id: string, cutting: "rolled" | "pattern"): Plan {
  const file = JSON.parse(present(DEMO_BOARDS.find((demo) => demo.id === id)).text);
  file.glass = { ...file.glass, cutting, patches: [...(file.glass.patches ?? []), BIAS] };
  const read = readBoardFile(JSON.stringify(file));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return planBuild(read.board);
}

const clothOf = (plan: Plan, language: "en" | "de" = "en") =>
  present(buildTemplate(plan, { of: "cloth", reader: { units: "mm", language } }));

const partOf = (template: Template, id: string): Part =>
  present(template.parts.find((part) => part.id === id));
const patternOf = (plan: Plan, id: string): Pattern =>
  present(plan.layup?.patterns.find((pattern) => pattern.id === id));
const itemsOn = ({ drawing }: Part, layer: string) =>
  drawing.layers.find(({ id }) => id === layer)?.items ?? [];
const lineOn = (part: Part, layer: string) =>
  present(itemsOn(part, layer).find((item) => item.kind === "polyline")).points;
const wordOn = (part: Part, text: string) =>
  present(itemsOn(part, "words").find((item) => item.kind === "text" && item.text === text));

/** A closed line's area, by trapezia, in square metres of cloth. */
function areaOf(points: ReadonlyArray<{ readonly x: number; readonly y: number }>): number {
  const twice = points.reduce((sum, from, i) => {
    const to = present(points[(i + 1) % points.length]);
    return sum + (from.x - to.x) * (from.y + to.y);
  }, 0);
  return Math.abs(twice / 2) / 1e6;
}

/** The plan's points on paper: up along the warp; a deck piece with left at the left hand, a bottom piece bottom up. */
function wantedPlaces({ face, points }: Pattern) {
  return points.map(({ alongM, acrossM }) => ({
    x: (face === "bottom" ? 1000 : -1000) * acrossM,
    y: -1000 * alongM,
  }));
}

describe.each(["five-ten-quad", "six-four-tri", "nine-two-long"])("%s cut to its patterns", (id) => {
  const plan = planOf(id, "pattern");
  const template = clothOf(plan);

  test.each(["bottom", "deck"] as const)(
    "on a4, joined, each corner of the %s pattern is where the plan has it",
    async (face) => {
      const only = present(pickPart(template, `${face}-1`));
      const pages = joinPages(await readPdf(await templatePdf(only, { paper: "a4", madeOn: MADE_ON })));
      const found = pages.flatMap(({ page, crosses, shift }) =>
        page.segments
          .filter(({ widthMm, dashed }) => !dashed && Math.abs(widthMm - THICK_MM) < 0.01)
          .flatMap(({ from, to }) => [from, to])
          .filter(
            ({ x, y }) =>
              x > crosses.left - 2 && x < crosses.right + 2 && y > crosses.top - 2 && y < crosses.foot + 2,
          )
          .map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y })),
      );
      const wanted = wantedPlaces(patternOf(plan, face));
      const least = (places: ReadonlyArray<{ x: number; y: number }>) => ({
        x: Math.min(...places.map(({ x }) => x)),
        y: Math.min(...places.map(({ y }) => y)),
      });
      const [from, to] = [least(wanted), least(found)];
      for (const place of wanted) {
        const off = found.map(({ x, y }) =>
          Math.hypot(x - to.x - (place.x - from.x), y - to.y - (place.y - from.y)),
        );
        expect(Math.min(...off)).toBeLessThan(WITHIN_MM);
      }
    },
  );

  test("every piece that is not rolled out has the pattern's area and is on one paper with those cut alike", () => {
    const named = template.parts.flatMap(({ title }) => title.split(", "));
    expect(named.toSorted()).toEqual(
      present(plan.layup)
        .pieces.map((piece) => piece.id)
        .toSorted(),
    );
    for (const part of template.parts) {
      const piece = present(plan.layup?.pieces.find((each) => each.id === part.id));
      const { areaM2, points } = patternOf(plan, piece.pattern);
      expect(areaOf(lineOn(part, "outline"))).toBeCloseTo(areaM2, 9);
      expect(lineOn(part, "outline")).toHaveLength(points.length);
    }
  });

  test("each notch is drawn from its root to the cut edge, and none leaves the cloth", () => {
    for (const face of ["bottom", "deck"] as const) {
      const part = partOf(template, `${face}-1`);
      const { notches } = patternOf(plan, face);
      const drawn = itemsOn(part, "notches");
      expect(drawn).toHaveLength(notches.length);
      const edge = lineOn(part, "outline");
      for (const item of drawn) {
        if (item.kind !== "polyline") continue;
        const [one, root, other] = item.points;
        const { origin } = part.drawing.frame;
        const sign = face === "bottom" ? 1000 : -1000;
        const isRoot = notches.some(
          ({ alongM, acrossM }) =>
            Math.hypot(
              origin.x + sign * acrossM - present(root).x,
              origin.y - 1000 * alongM - present(root).y,
            ) < EXACT_MM,
        );
        expect(isRoot).toBe(true);
        for (const leg of [one, other]) expect(offEdge(edge, present(leg))).toBeLessThan(EXACT_MM);
      }
    }
  });

  test("left is at the left hand on the deck's pieces and at the right hand on the bottom's", () => {
    for (const [face, left, right] of [
      ["deck", "LEFT", "RIGHT"],
      ["bottom", "RIGHT", "LEFT"],
    ] as const) {
      const part = partOf(template, `${face}-1`);
      const at = (text: string) => {
        const word = wordOn(part, text);
        return word.kind === "text" ? word.at.x : Number.NaN;
      };
      expect(at(left)).toBeLessThan(part.drawing.frame.origin.x);
      expect(at(right)).toBeGreaterThan(part.drawing.frame.origin.x);
    }
  });

  test("a patch on the bias shows the stringer at its angle from the warp, as long as the patch is along the board", () => {
    const piece = present(plan.layup?.pieces.find(({ extent }) => extent !== null && extent.angleRad !== 0));
    const line = present(
      itemsOn(partOf(template, piece.id), "stringer").find((item) => item.kind === "line"),
    );
    const [x, y] = [line.to.x - line.from.x, line.to.y - line.from.y];
    expect((Math.atan2(x, -y) * 180) / Math.PI).toBeCloseTo(30, 6);
    // The deck's own arc is a little longer than the tape along the bottom.
    expect(Math.abs(Math.hypot(x, y) - 400)).toBeLessThan(4);
  });
});

test("rolled out: the cut size, the pattern dashed in it at its own place, and in words how it is cut", () => {
  const plan = planOf("six-four-tri", "rolled");
  const template = clothOf(plan);
  const part = partOf(template, "deck-1");
  const piece = present(plan.layup?.pieces.find(({ id }) => id === "deck-1"));
  const pattern = patternOf(plan, "deck");
  expect(areaOf(lineOn(part, "outline"))).toBeCloseTo(piece.lengthM * piece.widthM, 9);
  expect(areaOf(lineOn(part, "trim"))).toBeCloseTo(pattern.areaM2, 9);
  const top = (layer: string) => Math.min(...lineOn(part, layer).map(({ y }) => y));
  expect(top("trim") - top("outline")).toBeCloseTo(500 * (piece.lengthM - pattern.lengthM), 6);
  expect(template.notes.join(" ")).toContain("trim it on the board all round at the lap, and notch it");
});

test("in German nothing of the paper is left in English", () => {
  const template = clothOf(planOf("six-four-tri", "pattern"), "de");
  expect(template.title).toBe("Gewebe");
  expect(template.orientation).toContain("Noseende oben");
  expect(itemsOn(partOf(template, "deck-1"), "words")).toEqual(
    expect.arrayContaining([expect.objectContaining({ text: "LINKS" })]),
  );
});

/** How far a place lies from a closed line. */
function offEdge(
  edge: ReadonlyArray<{ readonly x: number; readonly y: number }>,
  at: { readonly x: number; readonly y: number },
): number {
  return Math.min(
    ...edge.map((from, i) => {
      const to = present(edge[(i + 1) % edge.length]);
      const [x, y] = [to.x - from.x, to.y - from.y];
      const long = x * x + y * y;
      const share =
        long === 0 ? 0 : Math.min(Math.max(((at.x - from.x) * x + (at.y - from.y) * y) / long, 0), 1);
      return Math.hypot(from.x + share * x - at.x, from.y + share * y - at.y);
    }),
  );
}
