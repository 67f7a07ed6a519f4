/** Writes the JSON Schemas of the contract, `npm run schemas`; a test holds the committed files equal to them. */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { buildJsonSchemas } from "@lapline/contract";

const folder = fileURLToPath(new URL("../packages/contract/schemas/", import.meta.url));
mkdirSync(folder, { recursive: true });
for (const { fileName, text } of buildJsonSchemas()) {
  writeFileSync(`${folder}${fileName}`, text);
  console.log(`packages/contract/schemas/${fileName}`);
}
