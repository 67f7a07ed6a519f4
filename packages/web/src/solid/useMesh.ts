import type { Mesh, MeshDetail, SurveyInput } from "@lapline/engine";
import { useEffect, useState } from "react";
import { planner } from "../plan/tabPlanner";

/** The solid of the readings, made beside the page; the last one stays until the next is there, null before the first. */
export function useMesh(survey: SurveyInput, detail: MeshDetail, miss: () => void): Mesh | null {
  const [mesh, setMesh] = useState<Mesh | null>(null);
  useEffect(() => {
    let isCurrent = true;
    planner.mesh(survey, detail).then(
      (made) => isCurrent && setMesh(made),
      () => isCurrent && miss(),
    );
    return () => {
      isCurrent = false;
    };
  }, [survey, detail, miss]);
  return mesh;
}
