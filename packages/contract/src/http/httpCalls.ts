import { accessCalls } from "./accessCalls";
import { type HttpBody, type HttpCall, json } from "./HttpCall";

const bytes = (...types: string[]): HttpBody => ({ bytes: types });
const BOARD = "/api/boards/{id}";
const PHOTO = ["image/jpeg", "image/png", "image/webp"];
const RECORD = "/api/shelf/{shelf}/{id}";

/** Every call of the interface, in the order in which they are described. */
export const httpCalls: readonly HttpCall[] = [
  {
    method: "get",
    path: "/api/health",
    says: "Whether what is sent now can be kept",
    gives: { 200: json("Health") },
  },
  { method: "get", path: "/api/openapi.json", says: "This description", gives: { 200: json("OpenApi") } },
  {
    method: "get",
    path: "/api/lapline-board-1.schema.json",
    says: "The form of a board file",
    gives: { 200: json("JsonSchema") },
  },
  {
    method: "get",
    path: "/api/lapline-plan-1.schema.json",
    says: "The form of a plan",
    gives: { 200: json("JsonSchema") },
  },
  {
    method: "post",
    path: "/api/plan",
    says: "A board file's plan",
    takes: json("BoardFile"),
    gives: { 200: json("Plan") },
  },
  {
    method: "get",
    path: "/api/changes",
    says: "What is kept, while it happens, as server-sent events; Last-Event-ID gives what was missed",
    gives: { 200: bytes("text/event-stream") },
  },

  { method: "get", path: "/api/boards", says: "The boards in the Shed", gives: { 200: json("Boards") } },
  {
    method: "post",
    path: "/api/boards",
    says: "Keeps a board file under a new id from its name",
    takes: json("BoardFile"),
    gives: { 201: json("BoardKept") },
    revision: "makes",
  },
  {
    method: "get",
    path: BOARD,
    says: "A board file",
    gives: { 200: json("BoardFile"), 304: null },
    revision: "reads",
  },
  {
    method: "put",
    path: BOARD,
    says: "Keeps a board file; entries of its journal that it came without are put back into its record and named in `added`",
    takes: json("BoardFile"),
    gives: { 200: json("BoardKept"), 201: json("BoardKept") },
    revision: "changes",
  },
  {
    method: "delete",
    path: BOARD,
    says: "Puts a board away: out of the Shed, with all of it kept",
    gives: { 200: json("BoardPutAway") },
    revision: "changes",
  },
  {
    method: "get",
    path: "/api/put-away",
    says: "The boards that were put away",
    gives: { 200: json("BoardsPutAway") },
  },
  {
    method: "post",
    path: `${BOARD}/bring-back`,
    says: "Brings a board back into the Shed",
    gives: { 200: json("BoardKept") },
    revision: "makes",
  },
  {
    method: "get",
    path: `${BOARD}/versions`,
    says: "Every saved version, newest first",
    gives: { 200: json("Versions") },
  },
  {
    method: "get",
    path: `${BOARD}/versions/{version}`,
    says: "The board file of one version",
    gives: { 200: json("BoardFile"), 304: null },
    revision: "reads",
  },
  {
    method: "post",
    path: `${BOARD}/versions/{version}/take-back`,
    says: "Makes an earlier version the newest again, with the whole journal in its record",
    gives: { 200: json("BoardKept") },
    revision: "changes",
  },

  {
    method: "get",
    path: `${BOARD}/journal`,
    says: "The entries as they came",
    gives: { 200: json("Journal") },
  },
  {
    method: "post",
    path: `${BOARD}/journal`,
    says: "Keeps one entry, once by its id, and with it a version of the board in whose record it stands",
    takes: json("RecordEntry"),
    gives: { 200: json("KeptEntry"), 201: json("KeptEntry") },
  },

  { method: "get", path: `${BOARD}/photos`, says: "The photos of a board", gives: { 200: json("Photos") } },
  {
    method: "post",
    path: `${BOARD}/photos`,
    says: "Keeps a photo as it is, at most 20 MB and 50 million pixels; which type it is its bytes say",
    takes: bytes(...PHOTO),
    gives: { 200: json("Photo"), 201: json("Photo") },
  },
  {
    method: "get",
    path: `${BOARD}/photos/{hash}`,
    says: "A photo",
    gives: { 200: bytes(...PHOTO), 304: null },
  },

  {
    method: "get",
    path: `${BOARD}/sheets`,
    says: "The Sheets that were issued, newest first",
    gives: { 200: json("Sheets") },
  },
  {
    method: "post",
    path: `${BOARD}/sheets`,
    says: "Issues a Sheet: freezes the plan and the PDF of one version",
    takes: json("SheetAsked"),
    gives: { 200: json("Sheet"), 201: json("Sheet") },
  },
  {
    method: "get",
    path: `${BOARD}/sheets/{sheet}`,
    says: "What a Sheet was made from",
    gives: { 200: json("Sheet") },
  },
  {
    method: "get",
    path: `${BOARD}/sheets/{sheet}/pdf`,
    says: "A Sheet's PDF",
    gives: { 200: bytes("application/pdf"), 304: null },
  },
  {
    method: "get",
    path: `${BOARD}/sheets/{sheet}/plan`,
    says: "A Sheet's plan",
    gives: { 200: json("Plan"), 304: null },
  },

  {
    method: "get",
    path: "/api/shelf",
    says: "The shop's materials, prices, rolls and house sets",
    gives: { 200: json("Shelf") },
  },
  {
    method: "get",
    path: RECORD,
    says: "One record",
    gives: { 200: json("ShelfRecord"), 304: null },
    revision: "reads",
  },
  {
    method: "put",
    path: RECORD,
    says: "Keeps a record of a shelf",
    takes: json("ShelfRecord"),
    gives: { 200: json("ShelfKept"), 201: json("ShelfKept") },
    revision: "changes",
  },
  {
    method: "delete",
    path: RECORD,
    says: "Takes a record off its shelf; its versions stay",
    gives: { 204: null },
    revision: "changes",
  },
  {
    method: "get",
    path: `${RECORD}/versions`,
    says: "Every saved version, newest first",
    gives: { 200: json("ShelfVersions") },
  },

  {
    method: "get",
    path: "/api/archive",
    says: "The whole shop in one file",
    gives: { 200: bytes("application/jsonl") },
  },
  {
    method: "post",
    path: "/api/archive",
    says: "Takes such a file into a shop that holds nothing of its own, whole or not at all",
    takes: bytes("application/jsonl"),
    gives: { 204: null },
  },

  ...accessCalls,
];
