import { problem } from "./problem";

/** The answer where a board was put away: it is kept, and out of the Shed. */
export function putAway(putAwayAt: string): Response {
  const detail =
    "This board was put away. Its versions and journal are kept; a keeper can bring it back into the Shed.";
  return problem({ status: 410, title: "Put away", detail, putAwayAt });
}
