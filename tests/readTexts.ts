import { parseSync } from "vite";
import type { SourceFile } from "./sourceFiles";

/** Every text of a source file that a person reads, as the catalogues keep it, and every string that could be a word of one. */
export interface Texts {
  readonly said: readonly string[];
  readonly strings: readonly string[];
}

/** Tags of the templates whose text is a key. */
const TAGS = new Set(["say", "t"]);
/** Properties and variables of the engine that hold a text as a plain string; `title` and `words` of a source are citations. */
const PLAIN = /^(?:why|because|title|how|HOW_[A-Z]+|[A-Z_]*TITLES)$/;

interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

/** Reads the texts of one file with the parser that also builds it: `say` and `t` templates, and plain texts of the engine. */
export function readTexts({ path, text }: SourceFile): Texts {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]?.message}`);
  const said: string[] = [];
  const strings: string[] = [];
  const isEngine = path.startsWith("packages/engine/src") && !path.includes("/sources/");
  const plain = path.endsWith("/constants/cautions.ts") ? /^text$/ : PLAIN;
  walk(program, (node) => {
    if (typeof node.value === "string" && node.type === "Literal") strings.push(node.value);
    if (node.type === "TaggedTemplateExpression" && isTag(node.tag)) said.push(keyOf(node));
    if (isEngine) said.push(...listPlain(node, plain));
  });
  return { said, strings };
}

function walk(value: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(value)) for (const each of value) walk(each, visit);
  else if (isNode(value)) {
    visit(value);
    for (const field of Object.values(value)) walk(field, visit);
  }
}

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && "type" in value;
}

/** `t`, `say`, or `tell(reader)` where a file says one thing only. */
function isTag(tag: unknown): boolean {
  if (TAGS.has(nameOf(tag))) return true;
  return isNode(tag) && tag.type === "CallExpression" && nameOf(tag.callee) === "tell";
}

function nameOf(node: unknown): string {
  return isNode(node) && typeof node.name === "string" ? node.name : "";
}

/** As `keyOfPhrase` makes it of the phrase: the text, with {1}, {2}… where something is put in. */
function keyOf({ quasi }: Node): string {
  const quasis = isNode(quasi) && Array.isArray(quasi.quasis) ? quasi.quasis : [];
  return quasis.map(({ value }, i) => `${i === 0 ? "" : `{${i}}`}${value.cooked}`).join("");
}

function listPlain(node: Node, plain: RegExp): readonly string[] {
  if (node.type === "Property" && plain.test(nameOf(node.key))) return literalsIn(node.value);
  if (node.type === "VariableDeclarator" && plain.test(nameOf(node.id))) return literalsIn(node.init);
  if (node.type === "CallExpression" && nameOf(node.callee) === "assume" && Array.isArray(node.arguments))
    return literalsIn(node.arguments[2]);
  return [];
}

/** The strings that an expression may come to: itself, either arm of a choice, every value of an object. */
function literalsIn(node: unknown): readonly string[] {
  if (!isNode(node)) return [];
  if (node.type === "Literal") return typeof node.value === "string" ? [node.value] : [];
  if (node.type === "ConditionalExpression")
    return [...literalsIn(node.consequent), ...literalsIn(node.alternate)];
  if (node.type === "ObjectExpression" && Array.isArray(node.properties))
    return node.properties.flatMap((property) => literalsIn(property.value));
  return node.type === "TSAsExpression" || node.type === "TSSatisfiesExpression"
    ? literalsIn(node.expression)
    : [];
}
