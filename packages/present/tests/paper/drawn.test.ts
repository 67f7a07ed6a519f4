import type { Plan } from "@lapline/engine";
import DxfParser, {
  type ICircleEntity,
  type IEntity,
  type ILineEntity,
  type ILwpolylineEntity,
  type ITextEntity,
} from "dxf-parser";
import { describe, expect, test } from "vitest";
import { buildTemplate, type Template, templateDxf, templateSvg } from "../../src/paper";
import { PAPER_BOARDS } from "./paperBoards";
import { farthestOff, planMarks, tapeAt } from "./planMarks";

/** The figure. */
const WITHIN_MM = 0.01;

function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error("expected a value");
  return value;
}

const templateOf = (plan: Plan, of: "fins" | "outline" | "cloth"): Template =>
  present(buildTemplate(plan, { of, reader: { units: "mm", language: "en" } }));

/** Reads a DXF back with another library. */
function readDxf(text: string) {
  const dxf = present(new DxfParser().parseSync(text));
  return {
    units: dxf.header.$INSUNITS,
    layers: Object.keys(dxf.tables.layer.layers),
    on: (layer: string): readonly IEntity[] => dxf.entities.filter((entity) => entity.layer === layer),
  };
}

const isCircle = (entity: IEntity): entity is ICircleEntity => entity.type === "CIRCLE";
const isLine = (entity: IEntity): entity is ILineEntity => entity.type === "LINE";
const isText = (entity: IEntity): entity is ITextEntity => entity.type === "TEXT";
const isPolyline = (entity: IEntity): entity is ILwpolylineEntity => entity.type === "LWPOLYLINE";

interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Four corners in order, the first side as long as it is wide, all at right angles: both diagonals are alike. */
function expectRectangle(
  corners: readonly Corner[],
  { lengthM, widthM }: { readonly lengthM: number; readonly widthM: number },
): void {
  const between = (a: number, b: number) =>
    Math.hypot(present(corners[b]).x - present(corners[a]).x, present(corners[b]).y - present(corners[a]).y);
  const measured = [between(0, 1), between(2, 3), between(1, 2), between(3, 0), between(0, 2), between(1, 3)];
  const diagonal = Math.hypot(lengthM, widthM);
  [widthM, widthM, lengthM, lengthM, diagonal, diagonal].forEach((sizeM, i) => {
    expect(Math.abs((measured[i] ?? 0) - 1000 * sizeM)).toBeLessThan(WITHIN_MM);
  });
}

describe.each(PAPER_BOARDS)("$id as DXF", ({ plan }) => {
  test("is in millimetres, with a layer for each kind of line", () => {
    const { units, layers } = readDxf(templateDxf(templateOf(plan, "fins")));
    expect(units).toBe(4);
    expect(layers).toEqual(
      expect.arrayContaining(["outline", "marks", "boxes", "cut-outs", "stringer", "words"]),
    );
  });

  test.each(["fins", "outline", "cloth"] as const)(
    "says on the %s itself that the board is not for water",
    (of) => {
      const says = (water: Plan["water"]) =>
        readDxf(templateDxf(templateOf({ ...plan, water }, of)))
          .on("state")
          .map((entity) => (entity as { readonly text?: string }).text ?? "");
      expect(says({ ...plan.water, barred: true }).join(" ")).toContain("Not for water");
      expect(says({ ...plan.water, barred: false }).join(" ")).not.toContain("water");
    },
  );

  test("has the fin marks where the plan has them", () => {
    const { on } = readDxf(templateDxf(templateOf(plan, "fins")));
    const centres = on("marks")
      .filter(isCircle)
      .map(({ center }) => ({ x: center.x, y: -center.y }));
    expect(farthestOff(centres, planMarks(plan))).toBeLessThan(WITHIN_MM);
  });

  test("has LEFT at the reader's right, in the marks and in the words", () => {
    const { on } = readDxf(templateDxf(templateOf(plan, "fins")));
    const stringerX = present(present(on("stringer").find(isLine)).vertices[0]).x;
    const { marks } = present(plan.finset);
    const rings = on("marks").filter(isCircle);
    marks.forEach(({ trailing, leading }, i) => {
      [trailing, leading].forEach(({ at }, end) => {
        expect(present(rings[2 * i + end]).center.x - stringerX).toBeCloseTo(1000 * at.yM, 2);
      });
    });
    const xOf = (text: string) =>
      present(
        on("words")
          .filter(isText)
          .find((each) => each.text === text),
      ).startPoint.x;
    expect(xOf("LEFT is here")).toBeGreaterThan(stringerX);
    expect(xOf("RIGHT")).toBeLessThan(stringerX);
    for (const { id, side } of marks) {
      if (side === "left") expect(xOf(id.replaceAll("-", " "))).toBeGreaterThan(stringerX);
      if (side === "right") expect(xOf(id.replaceAll("-", " "))).toBeLessThan(stringerX);
    }
  });

  test("has each box and its cut-out at the plan's size, around the middle of the plan's box", () => {
    const shape = present(plan.shape);
    const finset = present(plan.finset);
    const { on } = readDxf(templateDxf(templateOf(plan, "fins")));
    const found = present(on("marks").filter(isCircle)[0]).center;
    const wanted = present(planMarks(plan)[0]);
    const origin = { x: found.x - wanted.x, y: found.y - wanted.up };
    const rectangles = (layer: string) =>
      on(layer)
        .filter(isPolyline)
        .map(({ vertices }) => vertices);
    const marks = finset.marks.filter(({ box }) => box !== null);
    for (const layer of ["boxes", "cut-outs"]) expect(rectangles(layer)).toHaveLength(marks.length);
    marks.forEach((mark, i) => {
      const box = present(mark.box);
      const cutOut = present(finset.verify.boxes.find(({ id }) => id === mark.id)).cutOut;
      expectRectangle(present(rectangles("boxes")[i]), box);
      expectRectangle(present(rectangles("cut-outs")[i]), cutOut);
      const planned = {
        x: (1000 * box.corners.reduce((sum, { yM }) => sum + yM, 0)) / 4,
        y: (1000 * box.corners.reduce((sum, { xM }) => sum + tapeAt(shape.profile, xM), 0)) / 4,
      };
      for (const layer of ["boxes", "cut-outs"]) {
        const corners = present(rectangles(layer)[i]);
        const middle = {
          x: corners.reduce((sum, { x }) => sum + x, 0) / 4 - origin.x,
          y: corners.reduce((sum, { y }) => sum + y, 0) / 4 - origin.y,
        };
        expect(Math.hypot(middle.x - planned.x, middle.y - planned.y)).toBeLessThan(2 * WITHIN_MM);
      }
    });
  });

  test("has both halves' edges where the plan's outline is", () => {
    const shape = present(plan.shape);
    const edges = readDxf(templateDxf(templateOf(plan, "outline")))
      .on("outline")
      .filter(isPolyline);
    expect(edges).toHaveLength(2);
    (["left", "right"] as const).forEach((side, i) => {
      const vertices = present(edges[i]).vertices;
      // The last but one corner is the nose on the stringer, the last the tail, or a swallow's crotch, on the stringer.
      const [nose, tail] = vertices.slice(-2);
      const crotchM = plan.finset?.line.crotchFromTailM ?? 0;
      shape.outline.forEach((point, k) => {
        const at = present(vertices[k]);
        const outMm = 1000 * (side === "left" ? -point.leftM : point.rightM);
        const upMm = 1000 * (tapeAt(shape.profile, point.fromTailM) - tapeAt(shape.profile, crotchM));
        expect(Math.abs(at.x - present(nose).x - outMm)).toBeLessThan(WITHIN_MM);
        expect(Math.abs(at.y - present(tail).y - upMm)).toBeLessThan(2 * WITHIN_MM);
      });
      expect(present(nose).x).toBeCloseTo(present(tail).x, 6);
    });
  });

  test("has each piece of cloth as large as the plan cuts it", () => {
    const pieces = present(plan.layup).pieces;
    const edges = readDxf(templateDxf(templateOf(plan, "cloth")))
      .on("outline")
      .filter(isPolyline);
    const sizes = edges.map(({ vertices }) => {
      const xs = vertices.map(({ x }) => x);
      const ys = vertices.map(({ y }) => y);
      return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    });
    for (const { widthM, lengthM } of pieces) {
      const isThere = sizes.some(
        ([across = 0, along = 0]) =>
          Math.abs(across - 1000 * widthM) < WITHIN_MM && Math.abs(along - 1000 * lengthM) < WITHIN_MM,
      );
      expect(isThere).toBe(true);
    }
  });
});

describe("what is odd", () => {
  const [board] = PAPER_BOARDS;
  const { plan } = present(board);
  const evil = 'a "name"\n 0\nEOF\r\n<script>&amp;%%d ]]>\u0000\u2028';

  test("a name cannot break out of a DXF file", () => {
    for (const of of ["fins", "outline", "cloth"] as const) {
      const plain = readDxf(templateDxf(templateOf({ ...plan, name: "plain" }, of)));
      const odd = readDxf(templateDxf(templateOf({ ...plan, name: evil }, of)));
      for (const layer of plain.layers) expect(odd.on(layer)).toHaveLength(plain.on(layer).length);
    }
  });

  test("nor out of an SVG file", () => {
    const svg = templateSvg(templateOf({ ...plan, name: evil }, "outline"), { date: "2026-04-11" });
    expect(svg).not.toContain("<script>");
    expect(svg.endsWith("</svg>")).toBe(true);
  });

  test("a plan without the stage has no template", () => {
    expect(
      buildTemplate({ ...plan, shape: null }, { of: "fins", reader: { units: "mm", language: "en" } }),
    ).toBeNull();
    expect(
      buildTemplate({ ...plan, shape: null }, { of: "outline", reader: { units: "mm", language: "en" } }),
    ).toBeNull();
    expect(
      buildTemplate({ ...plan, finset: null }, { of: "fins", reader: { units: "mm", language: "en" } }),
    ).toBeNull();
    expect(
      buildTemplate({ ...plan, layup: null }, { of: "cloth", reader: { units: "mm", language: "en" } }),
    ).toBeNull();
    expect(
      buildTemplate({ ...plan, finset: null }, { of: "outline", reader: { units: "mm", language: "en" } }),
    ).not.toBeNull();
  });
});
