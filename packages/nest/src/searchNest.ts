import { checkNestOrder } from "./checkNestOrder";
import { computeBoundM } from "./computeBound";
import { findPlace, type Place } from "./findPlace";
import { makeRandom } from "./makeRandom";
import type { NestLay, NestOrder, NestProgress, NestSearch } from "./NestOrder";
import { Shapes, type TurnedShape } from "./Shapes";

/** The order in which pieces are laid down, and which of its ways each lies. */
interface Sequence {
  readonly pieces: readonly number[];
  readonly ways: readonly number[];
}

interface Laid {
  readonly sequence: Sequence;
  readonly places: readonly Place[];
  readonly lengthM: number;
  /** What the search brings down: the length, and a little for pieces that lie far along. */
  readonly score: number;
}

/** A worse lay is accepted while it is no worse than that of so many steps ago. */
const MEMORY = 40;
/** Between two lays of one length the one with its pieces nearer to the free end is better. */
const NEARNESS = 0.01;
/** As near to the bound as this, nothing shorter is worth looking for. */
const PROVEN_M = 1e-6;
/** So many tellings of progress in a search. */
const TELLINGS = 50;

/**
 * Looks for the shortest roll that all pieces come out of. Each is laid by the bottom-left rule on no-fit outlines, in an order and with
 * turns that a local search changes: two swapped, one moved, one turned, a run reversed; late acceptance lets it out of dead ends.
 * Method: no-fit outlines and bottom-left as Bonfim Amaro Júnior, Pinheiro and Saraiva (Mathematical Problems in Engineering 2014,
 * 548957) describe them; late acceptance after Burke and Bykov 2017 (from memory).
 *
 * A generator, so that whoever runs it hears of progress, each time with the best lay so far, and may stop at any time. No clock:
 * the count of layings bounds it.
 * @throws Error where `checkNestOrder` finds a fault
 */
export function* searchNest(order: NestOrder, search: NestSearch): Generator<NestProgress, NestLay> {
  const [fault] = checkNestOrder(order);
  if (fault !== undefined) throw new Error(`this order cannot be laid out: ${fault.kind}`);
  const shapes = new Shapes(order);
  const random = makeRandom(search.seed);
  const boundM = computeBoundM(shapes);
  const tell = (made: number, best: Laid): NestProgress => ({
    made,
    of: search.layings,
    best: describe(shapes, best, boundM),
  });
  let now = startFrom(shapes);
  let best = now;
  let made = order.pieces.length;
  let toldAt = 0;
  const memory = new Array<number>(MEMORY).fill(now.score);
  for (let step = 0; made < search.layings && best.lengthM > boundM + PROVEN_M; step++) {
    if (made - toldAt >= search.layings / TELLINGS) {
      toldAt = made;
      yield tell(made, best);
    }
    const sequence = change(now.sequence, shapes, random);
    const from = firstChange(now.sequence, sequence);
    const next = lay(shapes, sequence, now.places.slice(0, from));
    made += Math.max(1, order.pieces.length - from);
    if (next.score <= now.score || next.score <= memory[step % MEMORY]!) now = next;
    memory[step % MEMORY] = now.score;
    if (now.score < best.score) best = now;
  }
  yield tell(search.layings, best);
  return describe(shapes, best, boundM);
}

/** The best of a few plain sequences: longest first, each way about, ends alike facing each other. */
function startFrom(shapes: Shapes): Laid {
  const pieces = shapes.ways
    .map((ways, i) => ({ i, lengthM: Math.min(...ways.map(({ lengthM }) => lengthM)) }))
    .sort((a, b) => b.lengthM - a.lengthM)
    .map(({ i }) => i);
  const turned = (wayOf: (at: number) => number) =>
    pieces.map((piece, at) => wayOf(at) % shapes.ways[piece]!.length);
  return [turned(() => 0), turned((at) => at), turned((at) => at + 1)]
    .map((ways) => lay(shapes, { pieces, ways }, []))
    .reduce((best, each) => (each.score < best.score ? each : best));
}

function lay(shapes: Shapes, sequence: Sequence, kept: readonly Place[]): Laid {
  const places = [...kept];
  const shapeAt = (at: number): TurnedShape => shapes.ways[sequence.pieces[at]!]![sequence.ways[at]!]!;
  for (let at = kept.length; at < sequence.pieces.length; at++) {
    const shape = shapeAt(at);
    const obstacles = places.map((place, k) => ({ ring: shapes.noFit(shapeAt(k), shape), ...place }));
    places.push(findPlace(obstacles, Math.max(0, shapes.order.widthM - shape.widthM)));
  }
  const endsM = places.map(({ x }, at) => x + shapeAt(at).lengthM);
  const lengthM = Math.max(...endsM);
  const meanM = endsM.reduce((sum, endM) => sum + endM, 0) / endsM.length;
  return { sequence, places, lengthM, score: lengthM + NEARNESS * meanM };
}

function change({ pieces, ways }: Sequence, shapes: Shapes, random: () => number): Sequence {
  const n = pieces.length;
  const pick = () => Math.floor(random() * n);
  const [i, j] = [pick(), pick()];
  const kind = random();
  if (kind < 0.3 || n === 1) {
    const options = shapes.ways[pieces[i]!]!.length;
    return { pieces, ways: ways.with(i, (ways[i]! + 1 + Math.floor(random() * (options - 1))) % options) };
  }
  const at = pieces.map((piece, k) => ({ piece, way: ways[k]! }));
  if (kind < 0.55) [at[i], at[j]] = [at[j]!, at[i]!];
  else if (kind < 0.9) at.splice(j, 0, ...at.splice(i, 1));
  else {
    const [from, to] = [Math.min(i, j), Math.max(i, j) + 1];
    at.splice(from, to - from, ...at.slice(from, to).reverse());
  }
  return { pieces: at.map(({ piece }) => piece), ways: at.map(({ way }) => way) };
}

/** What is laid before the first change lies where it lay. */
function firstChange(before: Sequence, after: Sequence): number {
  const at = before.pieces.findIndex(
    (piece, i) => piece !== after.pieces[i] || before.ways[i] !== after.ways[i],
  );
  return at === -1 ? before.pieces.length : at;
}

function describe(shapes: Shapes, laid: Laid, boundM: number): NestLay {
  const { order, areaM2 } = shapes;
  const placed = laid.sequence.pieces.map((piece, at) => {
    const shape = shapes.ways[piece]![laid.sequence.ways[at]!]!;
    const place = laid.places[at]!;
    return {
      id: order.pieces[piece]!.id,
      turnRad: shape.turnRad,
      points: shape.points.map(([x, y]) => ({ alongM: x + place.x, acrossM: y + place.y })),
    };
  });
  return {
    cloth: order.cloth,
    widthM: order.widthM,
    lengthM: laid.lengthM,
    areaM2,
    usedRatio: areaM2 / (order.widthM * laid.lengthM),
    placed,
    boundM,
    boxesM: shapes.ways.reduce((sumM, ways) => sumM + Math.min(...ways.map(({ lengthM }) => lengthM)), 0),
  };
}
