import { type HttpCall, httpCalls, httpParts } from "@lapline/contract";
import { expect } from "vitest";
import type { Answer, SentRequest } from "./sendRequest";

/** Holds an answer of the server to what the interface's description says of that call: its status, its type and its schema. */
export function holdToContract({ method = "GET", path }: SentRequest, answer: Answer): void {
  const call = httpCalls.find((each) => each.method === method.toLowerCase() && formOf(each).test(path));
  const type = String(answer.headers["content-type"] ?? "");
  const what = `${method} ${path.slice(0, 80)}, ${answer.status}, ${type}: ${answer.text.slice(0, 200)}`;
  if (type === "application/problem+json") {
    holdPart("Problem", answer.text, what);
    expect(JSON.parse(answer.text).status, what).toBe(answer.status);
    return;
  }
  if (call === undefined || !path.startsWith("/api/")) return;
  // What the server program refuses before a call is reached has no body of ours.
  if (answer.status === 400 && answer.text === "") return;
  const given = call.gives[answer.status];
  expect(given, `not described: ${what}`).not.toBeUndefined();
  if (given === null || given === undefined) expect(answer.text, what).toBe("");
  else if ("bytes" in given) expect(given.bytes, what).toContain(type);
  else {
    expect(type, what).toBe("application/json");
    holdPart(given.json, answer.text, what);
  }
}

function holdPart(part: string, text: string, what: string): void {
  const read = httpParts[part]?.safeParse(JSON.parse(text));
  expect(read?.error?.issues ?? [], what).toEqual([]);
  expect(read?.success, what).toBe(true);
}

function formOf({ path }: HttpCall): RegExp {
  return new RegExp(`^${path.replaceAll(".", "\\.").replace(/\{\w+\}/g, "[^/?]+")}(?:\\?|$)`);
}
