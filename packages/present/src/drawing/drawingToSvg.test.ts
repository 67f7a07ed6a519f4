import { describe, expect, test } from "vitest";
import type { Drawing, Item } from "./Drawing";
import { drawingToSvg } from "./drawingToSvg";

function draw(items: readonly Item[]): Drawing {
  return {
    widthMm: 120,
    heightMm: 80.5,
    frame: { origin: { x: 0, y: 0 }, alongMmPerM: { x: 1, y: 0 }, acrossMmPerM: { x: 0, y: 1 } },
    notes: ["Drawn 2 times."],
    layers: [{ id: "all", items }],
  };
}

const evil = `<script>alert("x")</script> & 'quoted' \u0000\u0007`;
const names = { title: "A board", desc: "From above.", idPrefix: "b1" };

describe("drawingToSvg", () => {
  test("is an image in millimetres, with a title and a description that carries the notes", () => {
    const svg = drawingToSvg(draw([]), names);
    expect(svg).toMatch(/^<svg [^>]*viewBox="0 0 120 80.5" width="120mm" height="80.5mm" role="img"/);
    expect(svg).toContain('aria-labelledby="b1-title b1-desc"');
    expect(svg).toContain('<title id="b1-title">A board</title>');
    expect(svg).toContain('<desc id="b1-desc">From above. Drawn 2 times.</desc>');
  });

  test("escapes every text, and drops what XML does not allow", () => {
    const text: Item = {
      kind: "text",
      at: { x: 1, y: 2 },
      text: evil,
      sizeMm: 3,
      anchor: "start",
      role: "note",
    };
    const svg = drawingToSvg(draw([text]), { title: evil, desc: evil, idPrefix: `"><script>` });
    expect(svg).not.toMatch(/<script/);
    expect(svg).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; &#39;quoted&#39; ");
    expect([...svg].every((character) => character >= " ")).toBe(true);
  });

  test("holds no style attribute and no script, so that a strict content policy lets it through", () => {
    const svg = drawingToSvg(
      draw([
        { kind: "line", pen: "centreline", from: { x: 0, y: 0 }, to: { x: 9, y: 9 } },
        {
          kind: "hatch",
          hatch: "foam",
          points: [
            { x: 0, y: 0 },
            { x: 1, y: 0 },
            { x: 1, y: 1 },
          ],
        },
      ]),
      names,
    );
    expect(svg).not.toMatch(/\sstyle=|<style|<script|\son\w+=|href=/);
    expect(svg).toContain('stroke-dasharray="6 0.75 0.25 0.75"');
    expect(svg).toContain('fill="url(#b1-foam)"');
  });

  test("sets fractions apart, and turns upright figures about their own place", () => {
    const figure: Item = {
      kind: "text",
      at: { x: 10, y: 20 },
      text: "7 1/8 in",
      sizeMm: 3.5,
      anchor: "middle",
      role: "figure",
      turnRad: -Math.PI / 2,
    };
    const svg = drawingToSvg(draw([figure]), names);
    expect(svg).toContain('7 <tspan class="fraction">1/8</tspan> in');
    expect(svg).toContain('transform="rotate(-90 10 20)"');
  });

  test("an arc starts and ends where its angles say", () => {
    const arc: Item = {
      kind: "arc",
      pen: "thin",
      centre: { x: 50, y: 40 },
      radiusMm: 10,
      fromRad: 0,
      toRad: Math.PI / 2,
    };
    expect(drawingToSvg(draw([arc]), names)).toContain('d="M60 40A10 10 0 0 1 50 50"');
  });

  test("a whole circle is drawn, though it comes back to its start", () => {
    const circle: Item = {
      kind: "arc",
      pen: "thin",
      centre: { x: 50, y: 40 },
      radiusMm: 2,
      fromRad: 0,
      toRad: 2 * Math.PI,
    };
    expect(drawingToSvg(draw([circle]), names)).toContain('d="M52 40A2 2 0 0 1 48 40A2 2 0 0 1 52 40"');
  });
});
