import type { SvgNode } from "@lapline/present";
import fc from "fast-check";
import { expect, test } from "vitest";
import { patchSvg } from "./patchSvg";

/** As much of a page's elements as a drawing needs, with a count of what was touched. */
class FakeElement {
  touched = 0;
  readonly attributes = new Map<string, string>();
  readonly childNodes: Array<FakeElement | FakeText> = [];
  readonly tag: string;
  parent: FakeElement | null = null;
  constructor(tag: string) {
    this.tag = tag;
  }
  readonly ownerDocument = {
    createTextNode: (text: string) => new FakeText(text),
    createElementNS: (_: string, tag: string) => new FakeElement(tag),
  };
  get lastChild(): FakeElement | FakeText | null {
    return this.childNodes.at(-1) ?? null;
  }
  setAttribute(name: string, value: string) {
    this.touched += 1;
    this.attributes.set(name, value);
  }
  removeAttribute(name: string) {
    this.touched += 1;
    this.attributes.delete(name);
  }
  append(child: FakeElement | FakeText) {
    this.touched += 1;
    child.parent = this;
    this.childNodes.push(child);
  }
  replaceWith(other: FakeElement | FakeText) {
    swap(this, other);
  }
  remove() {
    takeAway(this);
  }
}

class FakeText {
  parent: FakeElement | null = null;
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
  replaceWith(other: FakeElement | FakeText) {
    swap(this, other);
  }
  remove() {
    takeAway(this);
  }
}

function swap(there: FakeElement | FakeText, other: FakeElement | FakeText) {
  const { parent } = there;
  if (parent === null) throw new Error("it stands nowhere");
  parent.touched += 1;
  other.parent = parent;
  parent.childNodes[parent.childNodes.indexOf(there)] = other;
}

function takeAway(there: FakeElement | FakeText) {
  const { parent } = there;
  if (parent === null) throw new Error("it stands nowhere");
  parent.touched += 1;
  parent.childNodes.splice(parent.childNodes.indexOf(there), 1);
}

function draw(before: SvgNode | null, node: SvgNode, on = new FakeElement(node.tag)): FakeElement {
  patchSvg(on as unknown as Element, before, node);
  return on;
}

function read(there: FakeElement | FakeText): SvgNode | string {
  if (there instanceof FakeText) return there.text;
  return {
    tag: there.tag,
    attributes: Object.fromEntries(there.attributes),
    children: there.childNodes.map(read),
  };
}

const countTouched = (there: FakeElement): number =>
  there.childNodes.reduce(
    (sum, child) => sum + (child instanceof FakeElement ? countTouched(child) : 0),
    there.touched,
  );

const attributes = fc.dictionary(fc.constantFrom("d", "class", "x", "id"), fc.string({ maxLength: 3 }), {
  noNullPrototype: true,
});
const { node: anyNode } = fc.letrec<{ node: SvgNode }>((tie) => ({
  node: fc.record({
    tag: fc.constantFrom("g", "path", "text"),
    attributes,
    children: fc.array(fc.oneof({ depthSize: "small" }, fc.string({ maxLength: 4 }), tie("node")), {
      maxLength: 4,
    }),
  }),
}));
const svg = anyNode.map((node) => ({ ...node, tag: "svg" }));

test("a drawing that follows another is the same as one that is made for itself", () => {
  fc.assert(
    fc.property(svg, svg, svg, (first, second, third) => {
      const on = draw(null, first);
      draw(first, second, on);
      draw(second, third, on);
      expect(read(on)).toEqual(third);
      expect(read(on)).toEqual(read(draw(null, third)));
    }),
    { seed: 7, numRuns: 400 },
  );
});

test("what is as it was is not touched", () => {
  const path = (d: string): SvgNode => ({ tag: "path", attributes: { class: "pen", d }, children: [] });
  const sheet = (d: string): SvgNode => ({
    tag: "svg",
    attributes: { width: "9mm" },
    children: [path("M0 0"), { tag: "text", attributes: {}, children: ["9 in"] }, path(d)],
  });
  const on = draw(null, sheet("M1 1"));
  const before = countTouched(on);
  draw(sheet("M1 1"), sheet("M1 1"), on);
  expect(countTouched(on)).toBe(before);
  draw(sheet("M1 1"), sheet("M1 2"), on);
  expect(countTouched(on)).toBe(before + 1);
});
