import { quoteText, say } from "@lapline/engine";
import type { Node } from "jsonc-parser";
import type { Fault, Step } from "./Fault";
import { formatPlace } from "./formatPlace";

/** More than are ever shown. */
const MOST_REPEATS = 60;

/** Fields that stand twice in one object. */
export function findRepeats(root: Node, text: string): readonly Fault[] {
  const faults: Fault[] = [];
  collect(root, []);
  return faults;

  function collect(node: Node, steps: readonly Step[]): void {
    if (node.type === "array") node.children?.forEach((child, i) => void collect(child, [...steps, i]));
    if (node.type === "object") collectFields(node, steps);
  }

  function collectFields(node: Node, steps: readonly Step[]): void {
    const names = new Set<string>();
    for (const { children: [key, value] = [], offset } of node.children ?? []) {
      if (key === undefined || value === undefined || faults.length >= MOST_REPEATS) return;
      const name = String(key.value);
      if (names.has(name)) {
        const read = `${quoteText(name)} again at ${formatPlace(text, offset)}`;
        faults.push({
          steps: [...steps, name],
          read,
          says: say`give each field once: of two, one would be lost`,
        });
      }
      names.add(name);
      collect(value, [...steps, name]);
    }
  }
}
