import type { BoardFile } from "./file/BoardFile";

/** Wide enough for a station with all its readings. */
const LINE_WIDTH = 124;
const INDENT = "  ";

/** A board file as text that a person can read and edit: what fits stands on one line, a station with its readings. */
export function formatBoardFile(file: BoardFile): string {
  return `${expand(file, "")}\n`;
}

function formatValue(value: unknown, indent: string, used: number): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const line = onOneLine(value);
  // The comma behind it needs a place too.
  return indent.length + used + line.length + 1 <= LINE_WIDTH ? line : expand(value, indent);
}

function onOneLine(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(", ")}]`;
  const members = Object.entries(value).map(
    ([key, member]) => `${JSON.stringify(key)}: ${onOneLine(member)}`,
  );
  return members.length === 0 ? "{}" : `{ ${members.join(", ")} }`;
}

function expand(value: object, indent: string): string {
  const inner = indent + INDENT;
  if (Array.isArray(value)) {
    const elements = value.map((element) => inner + formatValue(element, inner, 0));
    return `[\n${elements.join(",\n")}\n${indent}]`;
  }
  const members = Object.entries(value).map(([key, member]) => {
    const name = `${JSON.stringify(key)}: `;
    return inner + name + formatValue(member, inner, name.length);
  });
  return `{\n${members.join(",\n")}\n${indent}}`;
}
