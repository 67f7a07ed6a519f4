import { formatQrText } from "@lapline/present/qr";
import type { PairingOffer } from "@lapline/server";
import type { Terminal } from "../Terminal";

/** A pairing code for whoever stands at the terminal: to scan, to type in, and until when. */
export function tellOffer({ code, role, expiresAt, links }: PairingOffer, terminal: Terminal): void {
  const [link] = links;
  if (code === null) return;
  if (link === undefined) {
    terminal.tell("This machine has no address on a local network just now: no device can reach it.");
    return;
  }
  const until = new Date(expiresAt).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  const who =
    role === "keeper" ? "one device in as a keeper, who may do everything" : "one device in at the bench";
  terminal.tell(formatQrText(link));
  terminal.tell(
    `Code ${code.slice(0, 4)} ${code.slice(4)} lets ${who}, until ${until}: scan, or type it in at`,
  );
  for (const each of links) terminal.tell(`  ${each.split("#")[0]}`);
}
