import type { Mesh, Plan } from "@lapline/engine";
import { useEffect, useLayoutEffect, useRef, useState } from "react";
import { useTell } from "../settings/useTell";
import { followHand } from "../shared/followHand";
import type { Colouring } from "./Colouring";
import { keyAct } from "./keyAct";
import { placeFinder, type SolidPlace } from "./SolidPlace";
import { SolidScene } from "./SolidScene";
import { SOLID_VIEWS, type SolidView } from "./solidViews";
import { vertexColours } from "./vertexColours";

interface SolidStageProps {
  /** Null while it is being made: the canvas is got ready meanwhile. */
  readonly mesh: Mesh | null;
  readonly shape: NonNullable<Plan["shape"]>;
  readonly colouring: Colouring;
  touch(place: SolidPlace | null): void;
  /** Something is to be seen. */
  drawn(): void;
  /** The browser has no WebGL. */
  miss(): void;
}

/** The canvas, and every way to turn what is on it: hand, keys and buttons. */
export function SolidStage({ mesh, shape, colouring, touch, drawn, miss }: SolidStageProps) {
  const t = useTell();
  const room = useRef<HTMLDivElement>(null);
  const [scene, setScene] = useState<SolidScene | null>(null);
  const latest = useRef({ shape, touch, drawn, miss });
  latest.current = { shape, touch, drawn, miss };

  useLayoutEffect(() => {
    const element = room.current;
    if (element === null) return;
    return openScene(element, {
      give: setScene,
      drawn: () => latest.current.drawn(),
      miss: () => latest.current.miss(),
    });
  }, []);
  useEffect(() => {
    if (mesh !== null) scene?.setMesh(mesh);
  }, [scene, mesh]);
  useEffect(() => {
    if (mesh !== null) scene?.setColours(vertexColours(mesh, colouring, shape));
  }, [scene, mesh, colouring, shape]);

  const touchAt = (xPx: number, yPx: number): void => {
    const point = scene?.pick(xPx, yPx) ?? null;
    const { shape: now, touch: tell } = latest.current;
    tell(point === null ? null : placeFinder(now)(point.x, point.y, point.z));
  };
  const touchMiddle = (): void => {
    const { clientWidth = 0, clientHeight = 0 } = room.current ?? {};
    touchAt(clientWidth / 2, clientHeight / 2);
  };
  useEffect(() => {
    const element = room.current;
    if (element === null || scene === null) return;
    return followHand(element, {
      drag: (rightPx, downPx) => scene.turn(rightPx * RAD_PER_PX, downPx * RAD_PER_PX),
      move: (rightPx, downPx) => scene.move(rightPx, downPx),
      zoom: (factor) => scene.zoom(factor),
      touch: touchAt,
    });
  });
  const names: Readonly<Record<SolidView, string>> = {
    whole: t`whole board`,
    deck: t`deck`,
    bottom: t`bottom`,
    side: t`side`,
  };
  return (
    <>
      <div
        ref={room}
        className="solid-room"
        role="application"
        aria-label={t`The board as a solid. Arrow keys turn it, with Shift they move it, plus and minus make it larger and smaller; the number is of the middle. A table stands below.`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: its keys turn the board
        tabIndex={0}
        onKeyDown={(event) => {
          if (scene === null || event.ctrlKey || event.metaKey || event.altKey) return;
          if (!keyAct(scene, event.key, event.shiftKey)) return;
          event.preventDefault();
          touchMiddle();
        }}
      >
        <canvas />
        <span className="solid-cross" aria-hidden="true" />
      </div>
      <div className="solid-ways">
        {SOLID_VIEWS.map((view) => (
          <button key={view} type="button" onClick={() => scene?.show(view)}>
            {names[view]}
          </button>
        ))}
        <button type="button" onClick={() => scene?.zoom(ZOOM)}>{t`larger`}</button>
        <button type="button" onClick={() => scene?.zoom(1 / ZOOM)}>{t`smaller`}</button>
      </div>
    </>
  );
}

const ZOOM = 1.5;
const RAD_PER_PX = 0.008;

interface Told {
  give(scene: SolidScene): void;
  drawn(): void;
  miss(): void;
}

/** Puts a scene on the canvas of a room and keeps it as large; it rests while it is out of sight. */
function openScene(element: HTMLElement, { give, drawn, miss }: Told): () => void {
  const canvas = element.querySelector("canvas");
  if (canvas === null) return () => {};
  let scene: SolidScene;
  try {
    scene = new SolidScene(canvas, drawn);
  } catch {
    miss();
    return () => {};
  }
  scene.resize(element.clientWidth, element.clientHeight);
  scene.show("whole");
  const sizes = new ResizeObserver(() => scene.resize(element.clientWidth, element.clientHeight));
  sizes.observe(element);
  const sight = new IntersectionObserver(([entry]) => scene.setSeen(entry?.isIntersecting ?? true));
  sight.observe(element);
  give(scene);
  return () => {
    sizes.disconnect();
    sight.disconnect();
    scene.dispose();
  };
}
