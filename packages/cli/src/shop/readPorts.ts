import { RefusedError } from "../RefusedError";

/** Where this machine's own page is, unless another port was asked for. */
export const FIRST_PORT = 5170;
const PORTS_TRIED = 20;

/** The port asked for, or those that are tried one after the other. */
export function readPorts(name: string, asked: string | true | undefined, first: number): readonly number[] {
  if (asked === undefined) return Array.from({ length: PORTS_TRIED }, (_, i) => first + i);
  const port = Number(asked);
  if (typeof asked === "string" && /^\d{1,5}$/.test(asked) && port <= 65_535) return [port];
  throw new RefusedError(
    `--${name} is a whole number from 0 (any free one) to 65535; ${JSON.stringify(asked)} was given.`,
  );
}
