import { runCommand } from "../src/runCommand";

export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process, with a terminal of the test's own. */
export async function runHere(args: readonly string[], input: string | Uint8Array = ""): Promise<Outcome> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommand(args, {
    input: inputOf(Buffer.from(input)),
    print: (text) => out.push(text),
    tell: (text) => err.push(text),
    stopAsked: () => Promise.reject(new Error("this test serves nothing")),
  });
  return { code, out: out.join("\n"), err: err.join("\n") };
}

/** In pieces, as a pipe hands it over. */
async function* inputOf(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += 65_536) yield bytes.subarray(at, at + 65_536);
}
