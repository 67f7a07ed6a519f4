import type { Mesh as BoardMesh } from "@lapline/engine";
import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  DirectionalLight,
  Mesh,
  MeshLambertMaterial,
  OrthographicCamera,
  Quaternion,
  Raycaster,
  Scene,
  Vector2,
  Vector3,
  WebGLRenderer,
} from "three";
import { fitScale, MOST_TIMES, type SolidView, turnOf } from "./solidViews";

const LENS_M = 4;
/** Share of a colour that shows where light falls flat on it, and what slanting light adds: the legend's colour comes out on top. */
const LIGHT = { all: 0.62 * Math.PI, slanting: 0.42 * Math.PI };
const DENSEST = 2;

/**
 * The board's own mesh in colour on a canvas, drawn only when something changed and while it is seen. Without perspective, so that
 * sizes compare from end to end.
 * @throws where the browser has no WebGL
 */
export class SolidScene {
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly camera = new OrthographicCamera(-1, 1, 1, -1, 0.1, 2 * LENS_M);
  private readonly geometry = new BufferGeometry();
  private readonly material = new MeshLambertMaterial({ vertexColors: true });
  private readonly body = new Mesh(this.geometry, this.material);
  private readonly middle = new Vector3();
  private readonly size = new Vector3(1, 1, 1);
  private readonly room = new Vector2(1, 1);
  private times = 1;
  private frame = 0;
  private isSeen = true;
  private isDrawn = false;

  constructor(
    private readonly canvas: HTMLCanvasElement,
    private readonly drawn: () => void,
  ) {
    this.renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    const lamp = new DirectionalLight(0xffffff, LIGHT.slanting);
    lamp.position.set(-0.4, 0.7, 1);
    this.scene.add(this.body, new AmbientLight(0xffffff, LIGHT.all), lamp);
    this.camera.position.z = LENS_M;
  }

  setMesh({ positions, triangles }: BoardMesh): void {
    // The graphics card lets go of what it holds of the mesh before.
    this.geometry.dispose();
    this.geometry.setAttribute("position", new BufferAttribute(Float32Array.from(positions), 3));
    this.geometry.setIndex(new BufferAttribute(triangles, 1));
    this.geometry.computeVertexNormals();
    this.geometry.computeBoundingBox();
    this.geometry.boundingBox?.getCenter(this.middle);
    this.geometry.boundingBox?.getSize(this.size);
    this.geometry.translate(-this.middle.x, -this.middle.y, -this.middle.z);
    this.frameUp();
  }

  /** Red, green and blue of every vertex in turn, in linear light. */
  setColours(rgb: Float32Array): void {
    this.geometry.setAttribute("color", new BufferAttribute(rgb, 3));
    this.ask();
  }

  resize(widthPx: number, heightPx: number): void {
    this.room.set(widthPx, heightPx);
    this.renderer.setPixelRatio(Math.min(window.devicePixelRatio, DENSEST));
    this.renderer.setSize(widthPx, heightPx, false);
    this.frameUp();
  }

  show(view: SolidView): void {
    this.body.quaternion.copy(turnOf(view, this.stands));
    this.times = 1;
    this.camera.position.set(0, 0, LENS_M);
    this.frameUp();
  }

  /** About the screen's upright and level axes, in radians. */
  turn(rightRad: number, downRad: number): void {
    const about = (axis: Vector3, rad: number): Quaternion => new Quaternion().setFromAxisAngle(axis, rad);
    this.body.quaternion
      .premultiply(about(new Vector3(0, 1, 0), rightRad))
      .premultiply(about(new Vector3(1, 0, 0), downRad));
    this.ask();
  }

  zoom(factor: number): void {
    this.times = Math.min(Math.max(this.times * factor, 1), MOST_TIMES);
    this.frameUp();
  }

  /** Moves what is seen by so many pixels, no further than the board reaches. */
  move(rightPx: number, downPx: number): void {
    const reachM = this.size.x / 2;
    const { position } = this.camera;
    position.x = Math.min(Math.max(position.x - rightPx / this.pxPerM, -reachM), reachM);
    position.y = Math.min(Math.max(position.y + downPx / this.pxPerM, -reachM), reachM);
    this.ask();
  }

  /** The board's point under a place of the canvas (CSS pixels from its top left corner); null beside the board. */
  pick(xPx: number, yPx: number): Vector3 | null {
    const ray = new Raycaster();
    this.scene.updateMatrixWorld();
    ray.setFromCamera(new Vector2((2 * xPx) / this.room.x - 1, 1 - (2 * yPx) / this.room.y), this.camera);
    const [hit] = ray.intersectObject(this.body);
    return hit === undefined ? null : this.body.worldToLocal(hit.point.clone()).add(this.middle);
  }

  setSeen(isSeen: boolean): void {
    this.isSeen = isSeen;
    if (isSeen) this.ask();
  }

  dispose(): void {
    cancelAnimationFrame(this.frame);
    this.geometry.dispose();
    this.material.dispose();
    this.renderer.dispose();
  }

  private get stands(): boolean {
    return this.room.y > this.room.x;
  }

  private get pxPerM(): number {
    return this.times * fitScale(this.room, this.size, this.stands);
  }

  private frameUp(): void {
    const [halfX, halfY] = [this.room.x / 2 / this.pxPerM, this.room.y / 2 / this.pxPerM];
    Object.assign(this.camera, { left: -halfX, right: halfX, top: halfY, bottom: -halfY });
    this.camera.updateProjectionMatrix();
    this.ask();
  }

  private ask(): void {
    cancelAnimationFrame(this.frame);
    // The first is drawn in any case, so that it is there when a reader comes to it.
    if ((this.isDrawn && !this.isSeen) || !this.geometry.hasAttribute("color")) return;
    this.frame = requestAnimationFrame(() => {
      this.renderer.render(this.scene, this.camera);
      this.isDrawn = true;
      this.canvas.dataset.drawn = String(Number(this.canvas.dataset.drawn ?? 0) + 1);
      this.drawn();
    });
  }
}
