/** The part of lib3mf that the tests use; the package brings no types. */
declare module "@3mfconsortium/lib3mf" {
  export interface Held {
    delete(): void;
  }
  interface Position extends Held {
    get_Coordinates0(): number;
    get_Coordinates1(): number;
    get_Coordinates2(): number;
  }
  interface Triangle extends Held {
    get_Indices0(): number;
    get_Indices1(): number;
    get_Indices2(): number;
  }
  interface Box extends Held {
    get_MinCoordinate0(): number;
    get_MinCoordinate1(): number;
    get_MinCoordinate2(): number;
  }
  export interface MeshObject extends Held {
    IsManifoldAndOriented(): boolean;
    GetName(): string;
    GetVertexCount(): number;
    GetTriangleCount(): number;
    GetVertex(at: number): Position;
    GetTriangle(at: number): Triangle;
  }
  interface Model extends Held {
    GetUnit(): unknown;
    GetOutbox(): Box;
    GetMeshObjects(): MeshObjects;
    GetMetaDataGroup(): MetaDataGroup;
    QueryReader(kind: "3mf"): Reader;
  }
  interface MeshObjects extends Held {
    MoveNext(): boolean;
    GetCurrentMeshObject(): MeshObject;
  }
  interface MetaDataGroup extends Held {
    GetMetaDataCount(): number;
    GetMetaData(at: number): MetaData;
  }
  interface MetaData extends Held {
    GetName(): string;
    GetValue(): string;
  }
  interface Reader extends Held {
    SetStrictModeActive(on: boolean): void;
    ReadFromFile(path: string): void;
    GetWarningCount(): number;
  }
  interface Wrapper extends Held {
    CreateModel(): Model;
  }
  interface Lib3mf {
    readonly CWrapper: new () => Wrapper;
    readonly eModelUnit: { readonly MilliMeter: unknown };
    readonly FS: { writeFile(path: string, bytes: Uint8Array): void };
  }
  export default function load(): Promise<Lib3mf>;
}
