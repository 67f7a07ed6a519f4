import { tell } from "../../language/tell";
import type { PaperBlock, PaperPage, Rect } from "../pdf/PaperDocument";
import type { Typesetter } from "../pdf/Typesetter";
import type { FlowPiece } from "../sheet/flow/FlowPiece";
import { flowPieces } from "../sheet/flow/flowPieces";
import { PAGE_SIZES } from "../sheet/PaperSize";
import type { JobSheetRequest } from "./JobSheetRequest";
import { Ledger } from "./Ledger";
import { MARGIN_MM, NOTE } from "./look";
import { FOOT_MM, HEAD_MM, pageEdgeBlocks } from "./pageEdge";
import { notePiece } from "./pieces/notePiece";
import { titlePiece } from "./pieces/titlePiece";
import type { SheetContext, SheetPart } from "./SheetContext";
import { finsPart } from "./sections/finsPart";
import { glassPart } from "./sections/glassPart";
import { measurePart } from "./sections/measurePart";
import { mixPart } from "./sections/mixPart";
import { stepsPart } from "./sections/stepsPart";
import { stopPieces } from "./sections/stopPieces";
import { weightPart } from "./sections/weightPart";

export interface ComposedSheet {
  readonly pages: readonly PaperPage[];
  /** Where each text with a number in it came from. */
  readonly ledger: Ledger;
}

/** No more pages than this can be taken in on a wall. */
const PAGES_AT_MOST = 4;

/** The Sheet's pages: all parts in the order of the work, each group of them on a page of its own where four pages bear it. */
export function composeSheet(request: JobSheetRequest, type: Typesetter): ComposedSheet {
  const { plan, reader, paper } = request;
  const size = PAGE_SIZES[paper];
  const t = tell(reader);
  const { widthMm } = pageRoom(paper, 0);
  const tries = TRIES.map((wish) => () => {
    const ledger = new Ledger(plan, reader);
    const context: SheetContext = {
      plan,
      reader,
      ledger,
      t,
      type,
      widthMm,
      noteMm: NOTE.sizeMm,
      drawn: wish.drawn,
      runsOn: wish.runsOn,
      notes: wish.notes,
    };
    return { ledger, pages: fillPages(sheetParts(request, context, wish), paper, wish) };
  });
  const { ledger, pages } = chooseTry(tries);
  return {
    ledger,
    pages: pages.map((blocks, i): PaperPage => {
      const edge = pageEdgeBlocks({ request, number: i + 1, of: pages.length, type, t });
      return { ...size, blocks: [...edge.head, ...blocks, ...edge.foot] };
    }),
  };
}

interface Wish {
  /** The board from the side, too. */
  readonly withProfile: boolean;
  readonly drawn: number;
  readonly runsOn: boolean;
  /** Findings that are no warning stand on the Sheet, too. */
  readonly notes: boolean;
  /** Parts that may start a page of their own do. */
  readonly apart: boolean;
}

/** The roomier first. */
const TRIES: readonly Wish[] = [
  { withProfile: true, drawn: 1, apart: true, runsOn: false, notes: true },
  { withProfile: true, drawn: 1, apart: false, runsOn: false, notes: true },
  { withProfile: true, drawn: 0.86, apart: false, runsOn: false, notes: true },
  { withProfile: false, drawn: 1, apart: false, runsOn: false, notes: true },
  { withProfile: false, drawn: 0.86, apart: false, runsOn: false, notes: true },
  { withProfile: false, drawn: 0.86, apart: false, runsOn: true, notes: true },
  { withProfile: false, drawn: 0.76, apart: false, runsOn: true, notes: true },
  { withProfile: false, drawn: 0.86, apart: false, runsOn: true, notes: false },
  { withProfile: false, drawn: 0.76, apart: false, runsOn: true, notes: false },
  { withProfile: false, drawn: 0.66, apart: false, runsOn: true, notes: false },
];

interface Tried {
  readonly ledger: Ledger;
  readonly pages: ReadonlyArray<readonly PaperBlock[]>;
}

/** The first that four pages bear; where none does, the roomiest of those with the fewest pages. */
function chooseTry(tries: ReadonlyArray<() => Tried>): Tried {
  let least: Tried | undefined;
  for (const make of tries) {
    const tried = make();
    if (tried.pages.length <= PAGES_AT_MOST) return tried;
    if (least === undefined || tried.pages.length < least.pages.length) least = tried;
  }
  if (least === undefined) throw new RangeError("there is no way to lay out the Sheet");
  return least;
}

/** What a page's parts have to themselves; the first has no head, because its title says whose board it is. */
function pageRoom(paper: JobSheetRequest["paper"], index: number): Rect {
  const { widthMm, heightMm } = PAGE_SIZES[paper];
  const headMm = index === 0 ? 0 : HEAD_MM;
  return {
    x: MARGIN_MM,
    y: MARGIN_MM + headMm,
    widthMm: widthMm - 2 * MARGIN_MM,
    heightMm: heightMm - 2 * MARGIN_MM - headMm - FOOT_MM,
  };
}

function fillPages(parts: readonly SheetPart[], paper: JobSheetRequest["paper"], { apart }: Wish) {
  const pages: Array<readonly PaperBlock[]> = [];
  for (const pieces of apart ? groupByPage(parts) : [parts.flatMap(({ pieces }) => pieces)]) {
    const before = pages.length;
    pages.push(...flowPieces(pieces, (index) => pageRoom(paper, before + index)));
  }
  return pages;
}

function sheetParts(
  request: JobSheetRequest,
  context: SheetContext,
  { withProfile }: Wish,
): readonly SheetPart[] {
  const { plan, order, url, madeOn } = request;
  const { t } = context;
  const facts = [
    ...(order?.rider === undefined ? [] : [t`for ${order.rider}`]),
    ...(order?.serial === undefined ? [] : [t`number ${order.serial}`]),
    madeOn.date,
  ];
  const title = titlePiece(
    {
      name: plan.name,
      facts: [facts.join(" · ")],
      ...(url === undefined ? {} : { url: { address: url, says: t`The board's page:` } }),
    },
    context,
  );
  return [
    { startsPage: true, pieces: [title, ...stopPieces(context), ...leftOutPieces(context)] },
    measurePart(context, withProfile),
    weightPart(context),
    finsPart(context),
    glassPart(context),
    mixPart(context),
    stepsPart(context),
  ];
}

/** Nobody should take a Sheet without notes for a board without them. */
function leftOutPieces(context: SheetContext): readonly FlowPiece[] {
  const { notes, t } = context;
  return notes
    ? []
    : [notePiece(t`Four pages hold the warnings only: the notes stand in the plan's text.`, context)];
}

function groupByPage(parts: readonly SheetPart[]): ReadonlyArray<readonly FlowPiece[]> {
  const groups: FlowPiece[][] = [];
  for (const { pieces, startsPage } of parts) {
    if (startsPage || groups.length === 0) groups.push([...pieces]);
    else groups.at(-1)?.push(...pieces);
  }
  return groups;
}
