import { listVersions, readBoard, saveBoard, sendEntry } from "../api/boardClient";
import { listenChanges } from "../api/listenChanges";
import { planner } from "../plan/tabPlanner";
import { openDeviceStore } from "./openDeviceStore";
import { openOutbox } from "./openOutbox";
import { openSession } from "./openSession";
import { runAlone } from "./runAlone";
import type { SessionParts } from "./SessionParts";
import type { BoardSession } from "./SessionView";
import type { ShopCalls } from "./ShopCalls";

/** A field of text, or a key of the pad that types into one. */
const TYPED_IN = "input[type=text], textarea, .pad *";

const shop: ShopCalls = {
  readBoard: (id) => readBoard(id, "as it is now"),
  listVersions,
  saveBoard,
  sendEntry,
};

const device = openDeviceStore();

const PARTS: SessionParts = {
  shop,
  planner,
  device,
  outbox: openOutbox({ device, shop, alone: runAlone }),
  now: () => new Date(),
  newId,
  isTyping: () => document.activeElement?.matches(TYPED_IN) === true,
  timer() {
    let running: ReturnType<typeof setTimeout> | undefined;
    return {
      set(ms, run) {
        clearTimeout(running);
        running = setTimeout(run, ms);
      },
    };
  },
};

const sessions = new Map<string, BoardSession>();

/** The one session of a board in this tab; it is opened when it is first asked for. */
export function sessionOf(id: string): BoardSession {
  if (sessions.size === 0) listen();
  const open = sessions.get(id);
  if (open !== undefined) return open;
  const session = openSession(id, PARTS);
  sessions.set(id, session);
  return session;
}

function listen(): void {
  listenChanges({
    changed({ kind, boardId, device, at, revision }) {
      if (kind === "board") sessions.get(boardId ?? "")?.hear({ device, at }, revision ?? undefined);
      if (kind === "shop") hearAll();
    },
    connected: hearAll,
  });
  // A field that is left is a step done.
  document.addEventListener("focusout", ({ relatedTarget }) => {
    if (relatedTarget instanceof Element && relatedTarget.matches(".pad *")) return;
    for (const session of sessions.values()) session.endStep();
  });
  window.addEventListener("online", () => {
    for (const session of sessions.values()) session.send();
  });
}

function hearAll(): void {
  for (const session of sessions.values()) session.hear(null);
}

/** Not `randomUUID`, which browsers keep from a page that came over the shop's network without a certificate. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(10));
  return `e${Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("")}`;
}
