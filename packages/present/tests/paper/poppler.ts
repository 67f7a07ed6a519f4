import { spawnSync } from "node:child_process";

/** Runs one of poppler's programs on a PDF that is handed over on standard input. Throws where it is not installed. */
function runPoppler(
  program: "pdftoppm" | "pdftotext" | "pdfinfo",
  args: readonly string[],
  pdf: Uint8Array,
): Buffer {
  const { error, status, stdout, stderr } = spawnSync(program, args, { input: pdf, maxBuffer: 2 ** 28 });
  if (error !== undefined && "code" in error && error.code === "ENOENT") {
    throw new Error(
      `${program} was not found. The checks on paper need poppler, a renderer of its own: install the Debian package poppler-utils (apt-get install poppler-utils).`,
    );
  }
  if (error !== undefined || status !== 0)
    throw new Error(`${program}: ${error?.message ?? stderr.toString()}`);
  return stdout;
}

/** A page as greys, 0 black, as an independent renderer prints it. */
export interface Picture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  readonly greys: Uint8Array;
}

const DPI = 300;

/** One page of a PDF, from one, at 300 dpi. */
export function renderPage(pdf: Uint8Array, page: number): Picture {
  const args = ["-gray", "-r", String(DPI), "-f", String(page), "-l", String(page), "-"];
  const output = runPoppler("pdftoppm", args, pdf);
  const [head = "", width, height] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(output.subarray(0, 40).toString("latin1")) ?? [];
  if (head === "") throw new Error("pdftoppm gave no grey picture");
  return {
    widthPx: Number(width),
    heightPx: Number(height),
    pxPerMm: DPI / 25.4,
    greys: output.subarray(head.length),
  };
}

/** All text of a PDF in the order it is written in, spaces and line ends made one space. */
export function extractText(pdf: Uint8Array): string {
  return runPoppler("pdftotext", ["-raw", "-", "-"], pdf).toString("utf8").replace(/\s+/g, " ");
}

/** What the file says of itself, name by name. */
export function describePdf(pdf: Uint8Array): Readonly<Record<string, string>> {
  const lines = runPoppler("pdfinfo", ["-"], pdf).toString("utf8").split("\n");
  return Object.fromEntries(lines.map((line) => [line.split(":")[0] ?? "", line.replace(/^[^:]*:\s*/, "")]));
}
