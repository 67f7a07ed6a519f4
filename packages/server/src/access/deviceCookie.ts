import { createHash, randomBytes } from "node:crypto";
import type { Context } from "hono";
import { getCookie, setCookie } from "hono/cookie";

const DAY_S = 86_400;
/** A device that was not here for so long is paired anew. */
const LASTS_S = 60 * DAY_S;
const TOKEN = /^[\w-]{43}$/;

/** 256 bits from the system's random source. */
export const makeToken = (): string => randomBytes(32).toString("base64url");

/** What is kept of a token. It is random and long, so that a plain hash of it gives nothing away. */
export const hashOfToken = (token: string): string => createHash("sha256").update(token).digest("hex");

export const expiryFrom = (now: Date): string => new Date(now.getTime() + LASTS_S * 1000).toISOString();

/** The token that a request brings, or null. */
export function readToken(context: Context, isSecure: boolean): string | null {
  const token = getCookie(context, nameOf(isSecure));
  return token !== undefined && TOKEN.test(token) ? token : null;
}

/** Gives the token to the browser, out of reach of scripts and of pages from elsewhere (RFC 6265bis). */
export function giveToken(context: Context, token: string, isSecure: boolean): void {
  setCookie(context, nameOf(isSecure), token, {
    httpOnly: true,
    sameSite: "Strict",
    secure: isSecure,
    path: "/",
    maxAge: LASTS_S,
  });
}

/** Under this prefix a browser takes the cookie only from HTTPS and from this very host (RFC 6265bis, 4.1.3). */
const nameOf = (isSecure: boolean) => (isSecure ? "__Host-lapline" : "lapline");
