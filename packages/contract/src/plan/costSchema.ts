import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();
const told = number.nullable();

const line = z.object({
  id: z.string(),
  kind: z.enum(["blank", "cloth", "resin", "hardener", "wax", "tint", "filler", "box", "plug", "own"]),
  price: told,
  packs: told,
  cost: told,
  outlay: told,
  mass: z
    .object({ onBoardKg: number, wastedKg: number, packKg: told, boughtKg: told, leftKg: told })
    .nullable(),
  length: z.object({ onBoardM: number, wastedM: number, packM: told, boughtM: told, leftM: told }).nullable(),
  volume: z
    .object({ onBoardM3: number, wastedM3: number, packM3: told, boughtM3: told, leftM3: told })
    .nullable(),
  pieces: z
    .object({
      onBoardCount: number,
      wastedCount: number,
      packCount: told,
      boughtCount: told,
      leftCount: told,
    })
    .nullable(),
});

const cost = z.object({
  materials: number,
  toBuy: number,
  unpriced: z.array(z.string()),
  lines: z.array(line),
});

export const costSchema: Mirrors<NonNullable<Plan["cost"]>, typeof cost> = cost;
