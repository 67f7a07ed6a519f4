import type { Drawing } from "../src";

/** A place on the board, metres from the tail and to the left of the stringer. */
export interface BoardPlace {
  readonly fromTailM: number;
  readonly leftM: number;
}

/** The paths of one layer of a drawing's SVG with a class, each as its points in sheet millimetres. */
export function readPaths(
  svg: string,
  layer: string,
  className: string,
): Array<Array<{ x: number; y: number }>> {
  const paths = [...readLayer(svg, layer).matchAll(/<path class="([^"]*)" d="([^"]*)"/g)];
  return paths
    .filter(([, classes = ""]) => classes.split(" ").includes(className))
    .map(([, , d = ""]) =>
      [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) })),
    );
}

/** The texts of one layer with where they stand. */
export function readTexts(svg: string, layer: string): Array<{ text: string; x: number; y: number }> {
  const texts = readLayer(svg, layer).matchAll(
    /<text class="[^"]*" x="(-?[\d.]+)" y="(-?[\d.]+)"[^>]*>(.*?)<\/text>/g,
  );
  return [...texts].map(([, x, y, inner = ""]) => ({
    text: inner
      .replace(/<[^>]*>/g, "")
      .replaceAll("&quot;", '"')
      .replaceAll("&#39;", "'"),
    x: Number(x),
    y: Number(y),
  }));
}

/** Measured as with a ruler on the sheet: the drawing's frame says how the board lies, and nothing else is known of it. */
export function measureOnBoard({ frame }: Drawing, { x, y }: { x: number; y: number }): BoardPlace {
  const { origin, alongMmPerM: along, acrossMmPerM: across } = frame;
  const [dx, dy] = [x - origin.x, y - origin.y];
  const determinant = along.x * across.y - along.y * across.x;
  return {
    fromTailM: (dx * across.y - dy * across.x) / determinant,
    leftM: (along.x * dy - along.y * dx) / determinant,
  };
}

function readLayer(svg: string, layer: string): string {
  const start = svg.indexOf(`<g class="layer-${layer}">`);
  if (start === -1) throw new Error(`no layer ${layer}`);
  const next = svg.indexOf('<g class="layer-', start + 1);
  return svg.slice(start, next === -1 ? undefined : next);
}
