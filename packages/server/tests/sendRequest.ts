import { request } from "node:http";

export interface SentRequest {
  readonly method?: string;
  /** Sent as it stands: no client tidies it. */
  readonly path: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string | Uint8Array;
}

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
  readonly bytes: Uint8Array;
}

/** One request on a connection of its own, with a Host header and a path that a browser would not let through. */
export function sendRequest(
  port: number,
  { method = "GET", path, headers, body }: SentRequest,
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const options = { host: "127.0.0.1", port, method, path, headers: { connection: "close", ...headers } };
    let answered = false;
    const sent = request(options, (response) => {
      answered = true;
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.on("error", reject);
      response.on("end", () => {
        const bytes = Buffer.concat(parts);
        const { statusCode = 0, headers } = response;
        resolve({ status: statusCode, headers, text: bytes.toString("utf8"), bytes });
      });
    });
    // A server that has answered may hang up on the rest of a body that it does not want.
    sent.on("error", (error) => {
      if (!answered) reject(error);
    });
    sent.end(body);
  });
}
