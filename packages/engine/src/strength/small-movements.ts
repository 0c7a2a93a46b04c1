import type { FrameRefusal } from "../analysis/frame-result.ts";
import type { BuildingCombination } from "../building.ts";

/** A tenth of a storey, rounded up: beyond it the theory of small movements says nothing. Common practice, no published source. */
const MOST_MM = 300;

/** A solution whose bearing points stay near where they were drawn; one that swings away is refused in words. */
export function smallMovements<Answer extends Pick<BuildingCombination, "movement" | "nodeIds">>(
  answer: Answer | FrameRefusal,
): Answer | FrameRefusal {
  if ("refused" in answer) return answer;
  const { movement, nodeIds } = answer;
  const far: { node: string; place: readonly number[]; mm: number }[] = [];
  for (let n = 0; n < nodeIds.length; n++) {
    const x = movement[n * 6] ?? 0;
    const y = movement[n * 6 + 1] ?? 0;
    const z = movement[n * 6 + 2] ?? 0;
    const mm = Math.sqrt(x * x + y * y + z * z);
    if (mm > MOST_MM) far.push({ node: nodeIds[n] ?? "", place: [x, y, z], mm });
  }
  const [first, ...others] = far;
  if (first === undefined) return answer;
  const worst = others.reduce((one, next) => (next.mm > one.mm ? next : one), first);
  return {
    refused: `No equilibrium near the drawn shape: node ${worst.node} would move ${Math.round(worst.mm)} mm`,
    moves: { nodes: far.map(({ node }) => node), direction: [...worst.place, 0, 0, 0].map((mm) => mm / worst.mm) },
  };
}
