import type { FrameRefusal } from "../analysis/frame-result.ts";
import type { BuildingCombination } from "../building.ts";

/** A tenth of a storey, rounded up: beyond it the theory of small movements says nothing. Common practice, no published source. */
const MOST_MM = 300;

/** A solution whose bearing points stay near where they were drawn; one that swings away is refused in words. */
export function smallMovements(answer: BuildingCombination | FrameRefusal): BuildingCombination | FrameRefusal {
  if ("refused" in answer) return answer;
  const moved = Object.entries(answer.frame.displacements).map(([node, [x = 0, y = 0, z = 0]]) => {
    return { node, direction: [x, y, z, 0, 0, 0], mm: Math.sqrt(x * x + y * y + z * z) };
  });
  const far = moved.filter(({ mm }) => mm > MOST_MM);
  const [first, ...others] = far;
  if (first === undefined) return answer;
  const worst = others.reduce((one, next) => (next.mm > one.mm ? next : one), first);
  return {
    refused: `No equilibrium near the drawn shape: node ${worst.node} would move ${Math.round(worst.mm)} mm`,
    moves: { nodes: far.map(({ node }) => node), direction: worst.direction.map((mm) => mm / worst.mm) },
  };
}
