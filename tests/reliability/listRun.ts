import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { startServer } from "@lapline/server";
import { openShop } from "@lapline/store";
import { ROOT } from "../sourceFiles";

/** How long the server takes to hand out the Shed's list, from the request to its last byte, in one process with the asker. */
export async function listRun({ boards, times }: { readonly boards: number; readonly times: number }) {
  const folder = await mkdtemp(join(tmpdir(), "lapline-list-"));
  const report = () => undefined;
  await writeOldFolder(folder, boards);
  const shop = await openShop({ folder, engine: "test", now: () => new Date(0), report });
  const webFolder = join(ROOT, "packages", "web", "dist");
  const server = await startServer({ shop, webFolder, version: "test", ports: [0], report });
  const took: number[] = [];
  let bytes = 0;
  for (let time = 0; time < times; time++) {
    const began = performance.now();
    bytes = (await (await fetch(`${server.address}api/boards`)).arrayBuffer()).byteLength;
    took.push(performance.now() - began);
  }
  await server.close();
  await shop.close();
  await rm(folder, { recursive: true });
  took.sort((a, b) => a - b);
  const at = (share: number) =>
    took[Math.min(took.length - 1, Math.floor(share * took.length))] ?? Number.NaN;
  return { boards, times, bytes, p50Ms: at(0.5), p95Ms: at(0.95), worstMs: at(1) };
}

/** As an earlier version kept them: they are taken in at once. */
async function writeOldFolder(folder: string, boards: number): Promise<void> {
  const demo = JSON.parse(DEMO_BOARDS[0]?.text ?? "") as object;
  for (let i = 0; i < boards; i++)
    await writeFile(join(folder, `board-${i}.json`), JSON.stringify({ ...demo, name: `board ${i}` }));
}
