import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { expect, it } from "vitest";
import { setOutWords } from "../src/words/setOutWords";

it("says where to draw the best-fit line, since a builder has only the stringer to measure from", () => {
  const demo = DEMO_BOARDS.find(({ id }) => id === "six-four-tri")!;
  const read = readBoardFile(demo.text);
  if (!read.ok) throw new Error("a demo board must be readable");
  const { finset } = planBuild(read.board);
  const words = setOutWords(finset!, { units: "mm", language: "en" });
  // The stringer is skewed with its nose end to the right, so the line lies to its right aft and to its left forward.
  const [aft, forward] = [finset!.line.atTailM, finset!.line.atNoseM];
  expect(aft).toBeLessThan(0);
  expect(words).toContain(`${(-aft * 1000).toFixed(1)} mm to the right of the stringer at the tail tips`);
  expect(words).toContain(`${(forward * 1000).toFixed(1)} mm to the left of the stringer at the nose tip`);
});
