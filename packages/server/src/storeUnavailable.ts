import type { StoreUnavailableError } from "@lapline/store";
import { problem } from "./problem";

const AGAIN_S = "5";

/** The answer where the disk or the database cannot keep anything: nothing of the request was kept, and why. */
export function storeUnavailable({ reason, message }: StoreUnavailableError): Response {
  const status = reason === "full" ? 507 : 503;
  return problem(
    { status, title: "Cannot be kept", detail: message, state: reason },
    { "retry-after": AGAIN_S },
  );
}
