import { z } from "zod";
import type { HttpParts } from "./HttpCall";

const role = () => z.enum(["bench", "keeper"]);
const time = () => z.string().meta({ format: "date-time" });
const device = { id: z.string(), name: z.string(), role: role() };
const offer = z.strictObject({
  state: z.enum(["waiting", "used", "expired", "locked"]),
  code: z.union([z.string(), z.null()]),
  role: role(),
  expiresAt: time(),
  links: z.array(z.string()),
});

/** What goes to and fro when devices are let in. */
export const accessParts: HttpParts = {
  Access: z.strictObject({
    here: z.boolean(),
    shared: z.boolean(),
    secure: z.boolean(),
    device: z.union([z.strictObject(device), z.null()]),
  }),
  AccessAsked: z.looseObject({ code: z.string(), name: z.string() }),
  LetIn: z.strictObject({ device: z.strictObject(device) }),
  Devices: z.strictObject({
    devices: z.array(
      z.strictObject({ ...device, pairedAt: time(), seenAt: time(), expiresAt: time(), own: z.boolean() }),
    ),
  }),
  DeviceNamed: z.looseObject({ name: z.string() }),
  Pairing: z.strictObject({
    shared: z.boolean(),
    secure: z.boolean(),
    addresses: z.array(z.string()),
    offer: z.union([offer, z.null()]),
  }),
  PairingAsked: z.looseObject({ role: role() }),
  PairingOffer: offer,
};
