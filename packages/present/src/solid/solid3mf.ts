import { strToU8, type ZippableFile, zipSync } from "fflate";
import { escapeXml } from "./escapeXml";
import type { Solid } from "./Solid";

const CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
const MODEL_RELATION = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
const MODEL_TYPE = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const RELATIONS_TYPE = "application/vnd.openxmlformats-package.relationships+xml";
const XML = '<?xml version="1.0" encoding="UTF-8"?>\n';
const MODEL_PATH = "3D/3dmodel.model";

/** The earliest a zip can hold: a file without a clock in it is the same whenever it is made. */
const NO_DATE = new Date(1980, 0, 1);
const MM_PER_M = 1000;
/** A nanometre: far below any reading, and short enough for a file of 28,000 points. */
const DECIMALS_MM = 6;

/**
 * The surveyed solid as a 3MF file in millimetres, for a slicer or a milling program.
 *
 * Its mesh keeps the board's frame: x from the tail to the nose, y to the surfer's left, z up; right-handed. The item that
 * places it moves it, without turning it, to where nothing is negative, as the core specification asks (section 3.3). It holds
 * no date, so equal boards give equal bytes.
 */
export function solid3mf(solid: Solid): Uint8Array {
  const file = (text: string): ZippableFile => [strToU8(text), { mtime: NO_DATE, level: 6 }];
  return zipSync({
    "[Content_Types].xml": file(contentTypes()),
    "_rels/.rels": file(relations()),
    [MODEL_PATH]: file(model(solid)),
  });
}

function contentTypes(): string {
  return `${XML}<Types xmlns="${PACKAGE}/content-types">
  <Default Extension="rels" ContentType="${RELATIONS_TYPE}"/>
  <Default Extension="model" ContentType="${MODEL_TYPE}"/>
</Types>
`;
}

function relations(): string {
  return `${XML}<Relationships xmlns="${PACKAGE}/relationships">
  <Relationship Id="model" Type="${MODEL_RELATION}" Target="/${MODEL_PATH}"/>
</Relationships>
`;
}

function model({ name, engine, mesh }: Solid): string {
  const title = escapeXml(name);
  const { positions, triangles } = mesh;
  const lines = [
    `${XML}<model unit="millimeter" xml:lang="en" xmlns="${CORE}">`,
    `<metadata name="Title">${title}</metadata>`,
    `<metadata name="Application">${escapeXml(`Lapline ${engine}`)}</metadata>`,
    `<resources><object id="1" type="model" name="${title}"><mesh><vertices>`,
  ];
  for (let i = 0; i < positions.length; i += 3) {
    lines.push(
      `<vertex x="${inMm(positions[i])}" y="${inMm(positions[i + 1])}" z="${inMm(positions[i + 2])}"/>`,
    );
  }
  lines.push("</vertices><triangles>");
  for (let i = 0; i < triangles.length; i += 3) {
    lines.push(`<triangle v1="${triangles[i]}" v2="${triangles[i + 1]}" v3="${triangles[i + 2]}"/>`);
  }
  lines.push("</triangles></mesh></object></resources>");
  lines.push(`<build><item objectid="1" transform="1 0 0 0 1 0 0 0 1 ${intoOctant(positions)}"/></build>`);
  lines.push("</model>", "");
  return lines.join("\n");
}

/** The move that brings the least coordinate along each axis to nought. */
function intoOctant(positions: Float64Array): string {
  const least = [Infinity, Infinity, Infinity];
  positions.forEach((valueM, i) => {
    least[i % 3] = Math.min(least[i % 3] ?? Infinity, valueM);
  });
  return least.map((valueM) => inMm(-valueM)).join(" ");
}

/** Never with an exponent: the last decimal is a millionth. */
function inMm(valueM = 0): string {
  return String(Number((valueM * MM_PER_M).toFixed(DECIMALS_MM)));
}
