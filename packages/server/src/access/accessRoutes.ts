import { getConnInfo } from "@hono/node-server/conninfo";
import type { Device } from "@lapline/store";
import { type Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { problem } from "../problem";
import { type Access, askerOf } from "./Access";
import { expiryFrom, giveToken, hashOfToken, makeToken } from "./deviceCookie";
import type { Guess } from "./PairingDesk";
import { readDeviceName } from "./readDeviceName";
import { readSmallJson, SMALL } from "./readSmallJson";

/** Who a device is, and how it gets in. */
export function accessRoutes(access: Access): Hono {
  const { sharing } = access;
  const isSecure = sharing?.isSecure ?? false;
  const routes = new Hono();

  routes.get("/", (context) => {
    const { isHere, device } = askerOf(context);
    const answer = {
      here: isHere,
      shared: sharing !== null,
      secure: isSecure,
      device: device && shown(device),
    };
    return context.json(answer, 200, { "cache-control": "no-store" });
  });

  routes.post("/", bodyLimit(SMALL), async (context) => {
    if (askerOf(context).isHere) {
      const detail = "This machine needs no code. Codes are typed in on the other devices.";
      return problem({ status: 409, title: "Let in already", detail });
    }
    const asked = await readSmallJson(context);
    if (asked instanceof Response) return asked;
    const name = readDeviceName(asked.name);
    if (name === null) return refused(422, "name");
    const address = getConnInfo(context).remote.address ?? "";
    const waitS = access.tries.waitS(address);
    if (waitS > 0) return refused(429, "slow", { waitS });
    const guess = access.desk.guess(typeof asked.code === "string" ? asked.code.replace(/[\s-]/g, "") : "");
    if (guess.kind !== "right") {
      access.tries.count(address);
      return guess.kind === "wrong" ? refused(403, "wrong", { left: guess.left }) : refused(403, guess.kind);
    }
    return letIn(context, name, guess);
  });

  async function letIn(context: Context, name: string, guess: Guess & { kind: "right" }): Promise<Response> {
    const token = makeToken();
    try {
      const device = await access.devices.add({
        name,
        role: guess.role,
        tokenHash: hashOfToken(token),
        expiresAt: expiryFrom(access.now()),
      });
      giveToken(context, token, isSecure);
      return context.json({ device: shown(device) }, 201, { "cache-control": "no-store" });
    } catch (error) {
      guess.giveBack();
      throw error;
    }
  }

  return routes;
}

const shown = ({ id, name, role }: Device) => ({ id, name, role });

type Reason = "name" | "slow" | "wrong" | "locked" | "none";

const DETAILS: Readonly<Record<Reason, string>> = {
  name: "A device's name is one line of 1 to 40 characters.",
  slow: "Too many wrong codes from this device. Wait a few minutes.",
  wrong: "That is not the code.",
  locked: "Five wrong codes: this one is locked. A new one is made at the shop's computer.",
  none: "There is no code just now: it has run out or was used. A new one is made at the shop's computer.",
};

function refused(
  status: 403 | 422 | 429,
  reason: Reason,
  more: { waitS?: number; left?: number } = {},
): Response {
  const headers: Record<string, string> =
    more.waitS === undefined ? {} : { "retry-after": String(more.waitS) };
  return problem({ status, title: "Not let in", detail: DETAILS[reason], reason, ...more }, headers);
}
