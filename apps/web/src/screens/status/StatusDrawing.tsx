import type { Project, Revision } from "@cornerway/schema";
import { useMemo } from "react";
import { useRevisionReport } from "../../checks/check-source.ts";
import { useForcesShown, withPath } from "../../forces/use-forces-shown.tsx";
import { useForcesThread } from "../../worker/use-forces-thread.ts";
import type { Hindrance } from "./hindrances.ts";
import { StatusPicture } from "./StatusPicture.tsx";

interface StatusDrawingProps {
  project: Project;
  revision: Revision;
  inTheWay: readonly Hindrance[];
}

/** The building as sheet 1 has it, strokes and all: the owner reads no kN, and sees where the load goes as it was solved. */
export function StatusDrawing({ project, revision, inTheWay }: StatusDrawingProps) {
  const { scheme, result } = revision;
  const forces = useForcesShown(scheme, useRevisionReport(project, revision, { anyone: true }), useForcesThread());
  const drawnOf = useMemo(() => withPath(result, forces.path), [result, forces.path]);
  return <StatusPicture scheme={scheme} assessment={drawnOf} layer={forces.layer} inTheWay={inTheWay} />;
}
