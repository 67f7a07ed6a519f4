import { runCommand } from "../src/runCommand";

export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** What every command that dates something is told; the same day wherever the test runs. */
const NOON = new Date(2026, 3, 11, 12);

/** Runs a command in this process, with a terminal of the test's own. */
export async function runHere(args: readonly string[], input: string | Uint8Array = ""): Promise<Outcome> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommand(args, {
    input: inputOf(Buffer.from(input)),
    print: (text) => out.push(text),
    tell: (text) => err.push(text),
    now: () => NOON,
    stopAsked: () => Promise.reject(new Error("this test serves nothing")),
  });
  return { code, out: out.join("\n"), err: err.join("\n") };
}

/** In pieces, as a pipe hands it over. */
async function* inputOf(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += 65_536) yield bytes.subarray(at, at + 65_536);
}
