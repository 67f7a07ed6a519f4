import type { PairingOffer } from "@lapline/server";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { FIRST_PORT, readPorts } from "../shop/readPorts";
import { tellOffer } from "../shop/tellOffer";

export const pairCommand: Command = {
  name: "pair",
  needs: [],
  says: "a new pairing code for one device, while the app is shared from this machine",
  options: {
    keeper: { says: "for a keeper, who may do everything; at the bench if left out" },
    port: { value: "N", says: `the port of this machine's own page; ${FIRST_PORT} if left out` },
  },
  async run({ options }, terminal) {
    const [port = FIRST_PORT] = readPorts("port", options.port, FIRST_PORT);
    const offer = await askForCode(port, options.keeper === undefined ? "bench" : "keeper");
    tellOffer(offer, terminal);
    terminal.print(offer.code ?? "");
    return 0;
  },
};

async function askForCode(port: number, role: PairingOffer["role"]): Promise<PairingOffer> {
  const headers = { "content-type": "application/json" };
  const request = { method: "POST", headers, body: JSON.stringify({ role }) };
  const answer = await fetch(`http://127.0.0.1:${port}/api/pairing`, request).catch(() => null);
  if (answer === null)
    throw new RefusedError(
      `No Lapline answers on port ${port}. Start it with lapline serve --share, or name its port with --port N.`,
    );
  const said = (await answer.json().catch(() => ({}))) as Partial<PairingOffer> & { detail?: unknown };
  if (answer.ok && typeof said.code === "string" && Array.isArray(said.links)) return said as PairingOffer;
  throw new RefusedError(
    typeof said.detail === "string" ? said.detail : `What answers on port ${port} is not Lapline.`,
  );
}
