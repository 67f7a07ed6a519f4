import { createReadStream } from "node:fs";
import { LARGEST_BOARD_FILE_BYTES } from "@lapline/contract";
import { say } from "@lapline/engine";
import { RefusedError } from "./RefusedError";
import { reasonOf } from "./reasonOf";
import type { Terminal } from "./Terminal";

const READING: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  ENOTDIR: "there is no such file",
  EISDIR: "it is a folder; name the file in it",
  EACCES: "this user may not read it",
  EPERM: "this user may not read it",
};

/** What a file should be, for the message where it is not. */
const BOARD_FILE = "A board file is JSON in UTF-8.";

/** The text of a board file, or of another that is no larger; `-` is standard input. Throws RefusedError. */
export async function readInput(file: string, terminal: Terminal, wanted = BOARD_FILE): Promise<string> {
  const name = file === "-" ? "standard input" : file;
  const bytes = await readUpToLargest(file === "-" ? terminal.input : createReadStream(file), name);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new RefusedError(say`${name} is not text. ${wanted}`);
  }
}

async function readUpToLargest(stream: AsyncIterable<Uint8Array>, name: string): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    for await (const part of stream) {
      size += part.byteLength;
      if (size > LARGEST_BOARD_FILE_BYTES) break;
      parts.push(part);
    }
  } catch (error) {
    throw new RefusedError(say`Cannot read ${name}: ${reasonOf(error, READING)}.`);
  }
  if (size > LARGEST_BOARD_FILE_BYTES) {
    throw new RefusedError(
      say`${name} is too large: what is read has at most ${LARGEST_BOARD_FILE_BYTES / 1e6} MB.`,
    );
  }
  return Buffer.concat(parts);
}
