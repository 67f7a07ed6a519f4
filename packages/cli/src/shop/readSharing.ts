import type { ServerOptions } from "@lapline/server";
import type { CommandOption, CommandWords } from "../Command";
import { RefusedError } from "../RefusedError";
import type { Terminal } from "../Terminal";
import { readPorts } from "./readPorts";

const FIRST_SHARED_PORT = 5190;

export const SHARE_OPTIONS: Readonly<Record<string, CommandOption>> = {
  share: { says: "lets the shop's devices in over the local network, by a pairing code" },
  "share-port": {
    value: "N",
    says: `the port for them; ${FIRST_SHARED_PORT} or the next free one if left out`,
  },
  cert: { value: "FILE", says: "your own certificate (PEM), so that they come by HTTPS; needs --key" },
  key: { value: "FILE", says: "its private key (PEM)" },
};

/** How the shop is to be shared, if it is. */
export async function readSharing(
  { share, cert, key, ...options }: CommandWords["options"],
  terminal: Terminal,
): Promise<Pick<ServerOptions, "share">> {
  const port = options["share-port"];
  if (share === undefined) {
    const [without] = Object.entries({ "--share-port": port, "--cert": cert, "--key": key })
      .filter(([, value]) => value !== undefined)
      .map(([name]) => name);
    if (without !== undefined)
      throw new RefusedError(`${without} is for devices on the local network: give --share as well.`);
    return {};
  }
  const ports = readPorts("share-port", port, FIRST_SHARED_PORT);
  const now = () => terminal.now();
  if (cert === undefined && key === undefined) return { share: { ports, now } };
  if (typeof cert !== "string" || typeof key !== "string")
    throw new RefusedError("HTTPS needs both: --cert FILE and --key FILE.");
  const { loadTls } = await import("@lapline/server");
  try {
    const tls = await loadTls(cert, key);
    if (terminal.now() > new Date(tls.certificate.validTo))
      terminal.tell(`The certificate ran out on ${tls.certificate.validTo}: browsers will refuse it.`);
    return { share: { ports, now, tls } };
  } catch (error) {
    if (error instanceof Error && error.name === "TlsRefusedError")
      throw new RefusedError(`${error.message}.`);
    throw error;
  }
}
