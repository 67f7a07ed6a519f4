import { type HttpCall, json } from "./HttpCall";

/** How devices are let in, listed and let in no more. */
export const accessCalls: readonly HttpCall[] = [
  {
    method: "get",
    path: "/api/access",
    says: "Who asks, and whether the shop is shared",
    gives: { 200: json("Access") },
  },
  {
    method: "post",
    path: "/api/access",
    says: "Lets a device in by the code that the shop's computer shows",
    takes: json("AccessAsked"),
    gives: { 201: json("LetIn") },
  },
  {
    method: "get",
    path: "/api/devices",
    says: "The devices that are let in",
    gives: { 200: json("Devices") },
  },
  {
    method: "patch",
    path: "/api/devices/{id}",
    says: "Gives a device another name",
    takes: json("DeviceNamed"),
    gives: { 204: null },
  },
  { method: "delete", path: "/api/devices/{id}", says: "Lets a device in no more", gives: { 204: null } },
  {
    method: "get",
    path: "/api/pairing",
    says: "The code that lets the next device in",
    gives: { 200: json("Pairing") },
  },
  {
    method: "post",
    path: "/api/pairing",
    says: "Makes such a code",
    takes: json("PairingAsked"),
    gives: { 201: json("PairingOffer") },
  },
];
