import { DEMO_BOARDS, formatBoardFile, type RecordEntryFile, readBoardFile } from "@lapline/contract";
import { expect, test } from "vitest";
import type { ShopFailure } from "../api/ShopFailure";
import { ShopFailureError } from "../api/ShopFailureError";
import { planOf } from "../plan/planOf";
import { understand } from "../plan/understand";
import { keepInMemory } from "./keepInMemory";
import { openOutbox } from "./openOutbox";
import { openSession } from "./openSession";
import type { BoardSession, OpenBoard } from "./SessionView";
import type { ShopCalls } from "./ShopCalls";

const ID = "five-ten-quad";
const LEFT = ["survey", "stations", 4, "left"] as const;
const RIGHT = ["survey", "stations", 4, "right"] as const;

/** The shop's computer as the interface has it: versions, revisions, an entry once by its id, and states in which it keeps nothing. */
function makeShop() {
  const first = DEMO_BOARDS.find(({ id }) => id === ID)?.text ?? "";
  const versions = [{ text: first, device: "demo" }];
  const journal: RecordEntryFile[] = [];
  let failure: ShopFailure | null = null;
  let reads = 0;
  const newest = () => versions.at(-1) ?? { text: "", device: "" };
  const revision = () => `r${versions.length}`;
  const asDevice = (device: string): ShopCalls => ({
    async readBoard() {
      if (failure !== null) throw new ShopFailureError(failure);
      reads += 1;
      return { text: newest().text, revision: revision() };
    },
    async listVersions() {
      const savedAt = "2026-04-11T09:00:00.000Z";
      return [
        { version: versions.length, revision: revision(), savedAt, device: newest().device, engine: "1" },
      ];
    },
    async saveBoard(_, text, ifMatch) {
      if (failure !== null) return failure;
      if (text === newest().text) return { kind: "saved", revision: revision() };
      if (ifMatch !== revision()) {
        const file: unknown = JSON.parse(newest().text);
        const savedAt = "2026-04-11T09:00:00.000Z";
        return {
          kind: "changed-meanwhile",
          kept: { revision: revision(), savedAt, device: newest().device, file },
        };
      }
      versions.push({ text, device });
      return { kind: "saved", revision: revision() };
    },
    async sendEntry(_, entry) {
      if (failure !== null) return failure;
      if (!journal.some(({ id }) => id === entry.id)) journal.push(entry);
      return { kind: "kept" };
    },
  });
  return {
    asDevice,
    journal,
    revision,
    reads: () => reads,
    fail: (next: ShopFailure | null) => {
      failure = next;
    },
    file: () => {
      const read = readBoardFile(newest().text);
      if (!read.ok) throw new Error("what is kept cannot be read");
      return read.file;
    },
  };
}

/** Timers that run when the test says so. */
function makeTimers() {
  const set = new Map<object, () => void>();
  const made = new Set<object>();
  return {
    timer() {
      const own = {};
      made.add(own);
      return { set: (_: number, run: () => void) => void set.set(own, run) };
    },
    /** Runs only the timer that was made last: a session's second one, for what it hears. */
    async settleLast() {
      const [last] = [...made].slice(-1);
      const run = last === undefined ? undefined : set.get(last);
      if (last !== undefined) set.delete(last);
      run?.();
      for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
    },
    /** Runs what is due until nothing is, but not the trying again of what has just failed. */
    async settle(rounds = 6) {
      for (let round = 0; round < rounds; round += 1) {
        const due = [...set.values()];
        set.clear();
        for (const run of due) run();
        for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve));
      }
    },
  };
}

function openOn(
  shop: ReturnType<typeof makeShop>,
  device: string,
  store = keepInMemory(),
  isTyping = false,
  planned: () => void = () => undefined,
) {
  const timers = makeTimers();
  let made = 0;
  const calls = shop.asDevice(device);
  const session = openSession(ID, {
    shop: calls,
    planner: {
      plan: async (text) => planOf(text),
      understand: async (file, known) => {
        const understood = understand(file, known);
        await new Promise((resolve) => setImmediate(resolve));
        planned();
        return understood;
      },
    },
    device: store,
    outbox: openOutbox({ device: store, shop: calls, alone: (work) => work() }),
    now: () => new Date("2026-04-11T10:00:00Z"),
    newId: () => `${device}-${++made}`,
    isTyping: () => isTyping,
    timer: timers.timer,
  });
  return { session, settle: timers.settle, settleLast: timers.settleLast, store };
}

function boardOf(session: BoardSession): OpenBoard {
  const view = session.view();
  if (view.kind !== "open") throw new Error(`the board is not open: ${JSON.stringify(view)}`);
  return view;
}
const stationOf = (session: BoardSession) => boardOf(session).draft.file.survey.stations[4];
const done = (step: string) => ({ kind: "done", step }) as const;

test("what two devices change in different fields is on both, and kept", async () => {
  const shop = makeShop();
  const [phone, desk] = [openOn(shop, "phone"), openOn(shop, "desk")];
  await phone.settle();
  await desk.settle();
  phone.session.edit(LEFT, "9 3/4 in");
  desk.session.edit(RIGHT, "9 1/2 in");
  await phone.settle();
  await desk.settle();
  phone.session.hear(null);
  await phone.settle();
  for (const { session } of [phone, desk])
    expect(stationOf(session)).toMatchObject({ left: "9 3/4 in", right: "9 1/2 in" });
  expect(shop.file().survey.stations[4]).toMatchObject({ left: "9 3/4 in", right: "9 1/2 in" });
  expect(boardOf(phone.session).changedBy?.device).toBe("desk");
  expect(boardOf(desk.session).saving.kind).toBe("saved");
});

test.each(["mine", "theirs"] as const)("one field changed on two devices is a choice: %s", async (side) => {
  const shop = makeShop();
  const [phone, desk] = [openOn(shop, "phone"), openOn(shop, "desk")];
  await phone.settle();
  await desk.settle();
  phone.session.edit(LEFT, "9 3/4 in");
  desk.session.edit(LEFT, "9 1/4 in");
  await phone.settle();
  await desk.settle();
  const [clash] = boardOf(desk.session).clashes;
  expect(clash).toMatchObject({
    path: "survey.stations[4].left",
    mine: "9 1/4 in",
    theirs: "9 3/4 in",
    typedAt: "2026-04-11T10:00:00.000Z",
    by: { device: "phone" },
  });
  // Until somebody has chosen, both values are there: one on the page, one kept.
  expect(stationOf(desk.session)?.left).toBe("9 1/4 in");
  expect(shop.file().survey.stations[4]?.left).toBe("9 3/4 in");
  desk.session.edit(RIGHT, "9 1/2 in");
  await desk.settle();
  expect(shop.file().survey.stations[4]).toMatchObject({ left: "9 3/4 in", right: "9 1/2 in" });
  desk.session.choose("survey.stations[4].left", side);
  await desk.settle();
  const chosen = side === "mine" ? "9 1/4 in" : "9 3/4 in";
  expect(boardOf(desk.session).clashes).toEqual([]);
  expect(stationOf(desk.session)?.left).toBe(chosen);
  expect(shop.file().survey.stations[4]?.left).toBe(chosen);
});

test("what is typed while the shop's computer is away goes out later, entries in their order and once", async () => {
  const shop = makeShop();
  const store = keepInMemory();
  const phone = openOn(shop, "phone", store);
  await phone.settle();
  shop.fail({ kind: "away" });
  const steps = ["prep", "mark-fins", "laminate-bottom", "trim-bottom", "laminate-deck"];
  for (const step of steps) phone.session.addEntry(done(step));
  phone.session.edit(LEFT, "9 3/4 in");
  await phone.settle();
  expect(boardOf(phone.session).saving).toEqual({ kind: "on-device", why: "away", entries: 5 });
  expect(await store.listUnsent()).toEqual([ID]);

  // The page is closed and opened anew on the same device, still without the shop's computer.
  const later = openOn(shop, "phone", store);
  await later.settle();
  expect(stationOf(later.session)?.left).toBe("9 3/4 in");
  expect(boardOf(later.session).saving).toMatchObject({ kind: "on-device", entries: 5 });
  shop.fail(null);
  later.session.send();
  await later.settle();
  expect(shop.journal.map((entry) => entry.kind === "done" && entry.step)).toEqual(steps);
  const kept = shop.file().record ?? [];
  expect(kept.slice(-5).map(({ id }) => id)).toEqual(shop.journal.map(({ id }) => id));
  expect(new Set(kept.map(({ id }) => id)).size).toBe(kept.length);
  expect(shop.file().survey.stations[4]?.left).toBe("9 3/4 in");
  expect(boardOf(later.session).saving.kind).toBe("saved");
  expect(await store.listUnsent()).toEqual([]);
});

test("a save whose answer was lost is no clash with oneself", async () => {
  const shop = makeShop();
  const phone = openOn(shop, "phone");
  await phone.settle();
  const calls = shop.asDevice("phone");
  phone.session.edit(LEFT, "9 3/4 in");
  // It is kept there, but this device does not hear so.
  const text = formatBoardFile(boardOf(phone.session).draft.file);
  shop.fail({ kind: "away" });
  await phone.settle(1);
  shop.fail(null);
  await calls.saveBoard(ID, text, "r1");
  phone.session.edit(LEFT, "9 13/16 in");
  await phone.settle();
  expect(boardOf(phone.session).clashes).toEqual([]);
  expect(shop.file().survey.stations[4]?.left).toBe("9 13/16 in");
});

test.each([
  [{ kind: "full" }, { kind: "on-device", why: "full", entries: 1 }],
  [{ kind: "read-only" }, { kind: "on-device", why: "read-only", entries: 1 }],
  [{ kind: "unpaired" }, { kind: "unpaired" }],
  [
    { kind: "not-allowed", why: "No." },
    { kind: "not-allowed", why: "No." },
  ],
] as const)("what cannot be kept there stays here and is told: %o", async (failure, saving) => {
  const shop = makeShop();
  const phone = openOn(shop, "phone");
  await phone.settle();
  shop.fail(failure);
  phone.session.addEntry(done("prep"));
  await phone.settle();
  expect(boardOf(phone.session).saving).toEqual(saving);
  shop.fail(null);
  phone.session.send();
  await phone.settle();
  expect(shop.journal).toHaveLength(1);
  expect(boardOf(phone.session).saving.kind).toBe("saved");
});

test("where this device's own memory fails for a while, what is typed and entered goes out all the same", async () => {
  const shop = makeShop();
  const store = keepInMemory();
  let isBroken = false;
  const orBroken = <T>(work: () => Promise<T>) =>
    isBroken ? Promise.reject(new Error("the browser's database is shut")) : work();
  const phone = openOn(shop, "phone", {
    ...store,
    firstEntry: () => orBroken(store.firstEntry),
    addEntry: (boardId, entry) => orBroken(() => store.addEntry(boardId, entry)),
  });
  await phone.settle();
  isBroken = true;
  phone.session.edit(LEFT, "9 3/4 in");
  const id = phone.session.addEntry(done("sand-deck"));
  await phone.settle();
  expect(boardOf(phone.session).saving).toMatchObject({ kind: "on-device", entries: 0 });
  isBroken = false;
  phone.session.send();
  await phone.settle();
  expect(boardOf(phone.session).saving.kind).toBe("saved");
  expect(shop.file().survey.stations[4]?.left).toBe("9 3/4 in");
  expect(shop.file().record?.at(-1)?.id).toBe(id);
});

test("typing in one field is one step; undo takes back only what is of here, redo brings it again", async () => {
  const shop = makeShop();
  const [phone, desk] = [openOn(shop, "phone", keepInMemory(), true), openOn(shop, "desk")];
  await phone.settle();
  await desk.settle();
  const before = stationOf(phone.session)?.left;
  for (const typed of ["9", "9 3", "9 3/4 in"]) phone.session.edit(LEFT, typed);
  await phone.settle();
  desk.session.hear(null);
  desk.session.edit(RIGHT, "9 1/2 in");
  await desk.settle();
  phone.session.hear(null);
  await phone.settle();
  phone.session.undo();
  expect(stationOf(phone.session)).toMatchObject({ left: before, right: "9 1/2 in" });
  expect(boardOf(phone.session)).toMatchObject({ canUndo: false, canRedo: true });
  phone.session.redo();
  expect(stationOf(phone.session)).toMatchObject({ left: "9 3/4 in", right: "9 1/2 in" });
  phone.session.endStep();
  phone.session.edit(LEFT, "9 7/8 in");
  phone.session.undo();
  expect(stationOf(phone.session)?.left).toBe("9 3/4 in");
});

test("a removed station comes back to its place by undo", async () => {
  const phone = openOn(makeShop(), "phone");
  await phone.settle();
  const before = boardOf(phone.session).draft.file.survey.stations;
  phone.session.edit(["survey", "stations", 2], undefined);
  phone.session.undo();
  expect(boardOf(phone.session).draft.file.survey.stations).toEqual(before);
});

test("undo strikes the entry written last and never erases it", async () => {
  const shop = makeShop();
  const phone = openOn(shop, "phone");
  await phone.settle();
  phone.session.edit(LEFT, "9 3/4 in");
  const id = phone.session.addEntry(done("sand-deck"));
  phone.session.undo();
  expect(boardOf(phone.session).notice).toBe("struck");
  await phone.settle();
  const [entry, struck] = shop.file().record?.slice(-2) ?? [];
  expect(entry?.id).toBe(id);
  expect(struck).toMatchObject({ kind: "struck", corrects: id });
  expect(shop.journal).toHaveLength(2);
  phone.session.undo();
  expect(stationOf(phone.session)?.left).not.toBe("9 3/4 in");
  expect(boardOf(phone.session).draft.file.record?.at(-2)?.id).toBe(id);
});

test("an entry that was corrected already is left alone by undo, which says so", async () => {
  const phone = openOn(makeShop(), "phone");
  await phone.settle();
  const id = phone.session.addEntry(done("sand-deck"));
  phone.session.addEntry({ ...done("sand-bottom"), corrects: id });
  phone.session.undo();
  phone.session.undo();
  expect(boardOf(phone.session).notice).toBe("record-stays");
  expect(boardOf(phone.session).draft.file.record?.filter((each) => each.corrects === id)).toHaveLength(1);
});

test("undo leaves a field as another device has changed it since, and says so", async () => {
  const shop = makeShop();
  const [phone, desk] = [openOn(shop, "phone"), openOn(shop, "desk")];
  await phone.settle();
  phone.session.edit(LEFT, "9 3/4 in");
  await phone.settle();
  desk.session.hear(null);
  await desk.settle();
  desk.session.edit(LEFT, "9 7/8 in");
  await desk.settle();
  phone.session.hear(null);
  await phone.settle();
  phone.session.undo();
  expect(stationOf(phone.session)?.left).toBe("9 7/8 in");
  expect(boardOf(phone.session).notice).toBe("changed-since");
});

test("an old version taken back keeps the record as it grew since", async () => {
  const shop = makeShop();
  const old = shop.file();
  const phone = openOn(shop, "phone");
  await phone.settle();
  phone.session.edit(LEFT, "9 3/4 in");
  const id = phone.session.addEntry(done("sand-deck"));
  await phone.settle();
  phone.session.takeBack(old);
  await phone.settle();
  expect(shop.file().survey).toEqual(old.survey);
  expect(shop.file().record?.at(-1)?.id).toBe(id);
});

test("an entry that a form puts into the record gets an id that no other device can have", async () => {
  const shop = makeShop();
  const phone = openOn(shop, "phone");
  await phone.settle();
  const record = boardOf(phone.session).draft.file.record ?? [];
  phone.session.edit(["record"], [...record, { id: `r${record.length + 1}`, ...done("sand-deck") }]);
  await phone.settle();
  expect(shop.journal.map(({ id }) => id)).toEqual(["phone-1"]);
  expect(shop.file().record?.at(-1)).toEqual({ id: "phone-1", kind: "done", step: "sand-deck" });
});

test("what this device sent itself is not read again when it is heard of, and another's is", async () => {
  const shop = makeShop();
  const phone = openOn(shop, "phone");
  const desk = openOn(shop, "desk");
  await phone.settle();
  await desk.settle();
  phone.session.edit(LEFT, "9 1/2 in");
  await phone.settle();
  const before = shop.reads();
  phone.session.hear({ device: "phone", at: "2026-04-11T09:00:00.000Z" }, shop.revision());
  await phone.settle();
  expect(shop.reads()).toBe(before);
  desk.session.hear({ device: "phone", at: "2026-04-11T09:00:00.000Z" }, shop.revision());
  await desk.settle();
  expect(shop.reads()).toBe(before + 1);
  expect(boardOf(desk.session)).toMatchObject({
    changedBy: { device: "phone" },
    draft: { isUnderstood: true },
  });
  expect(boardOf(desk.session).draft.file.survey.stations[4]?.left).toBe("9 1/2 in");
  // Heard of without a revision, as after a connection that was lost, it is read in any case.
  phone.session.hear(null);
  phone.session.hear({ device: "phone", at: "2026-04-11T09:00:00.000Z" }, shop.revision());
  await phone.settle();
  expect(shop.reads()).toBe(before + 2);
});

test("what others change is read while somebody here types without a pause", async () => {
  const shop = makeShop();
  const phone = openOn(shop, "phone");
  const desk = openOn(shop, "desk");
  await phone.settle();
  await desk.settle();
  phone.session.edit(LEFT, "9 1/2 in");
  await phone.settle();
  desk.session.hear({ device: "phone", at: "2026-04-11T09:00:00.000Z" }, shop.revision());
  // Each key sets the timer of typing anew; that of the news stays as it was.
  desk.session.edit(RIGHT, "9 5/8 in");
  await desk.settleLast();
  expect(boardOf(desk.session).draft.file.survey.stations[4]).toMatchObject({
    left: "9 1/2 in",
    right: "9 5/8 in",
  });
});

test("nor does it wait for the plan of each key that is typed meanwhile; the last one is sent", async () => {
  const shop = makeShop();
  const phone = openOn(shop, "phone");
  // The next key comes before the plan of the last one, again and again.
  let keys = 0;
  let isTypedOn = true;
  const desk = openOn(shop, "desk", keepInMemory(), true, () => {
    if (isTypedOn) desk.session.edit(RIGHT, `${240 + (keys++ % 9)} mm`);
  });
  await phone.settle();
  await desk.settle();
  phone.session.edit(LEFT, "9 1/2 in");
  await phone.settle();
  desk.session.edit(RIGHT, "249 mm");
  await desk.settle(1);
  desk.session.hear({ device: "phone", at: "2026-04-11T09:00:00.000Z" }, shop.revision());
  await desk.settle(3);
  expect(keys).toBeGreaterThan(5);
  expect(boardOf(desk.session).draft.file.survey.stations[4]?.left).toBe("9 1/2 in");
  isTypedOn = false;
  await desk.settle();
  expect(shop.file().survey.stations[4]).toMatchObject({
    left: "9 1/2 in",
    right: `${240 + ((keys - 1) % 9)} mm`,
  });
  expect(boardOf(desk.session)).toMatchObject({ saving: { kind: "saved" } });
});
