import type { Building } from "../geometry/building.ts";
import type { ModelBeam, ModelNode, ModelSection } from "./analytical-model.ts";
import type { BearingPlan } from "./bearing-plan.ts";
import { nodeName } from "./building-model.ts";
import type { ModelAssumptions } from "./model-assumptions.ts";
import { postSection } from "./unit-lines-of.ts";

/** Posts that stand by themselves, as members between the containers. */
export function drawFreePosts(
  { postById }: Pick<Building, "postById">,
  { freePosts: ids }: BearingPlan,
  assumptions: ModelAssumptions,
): { nodes: ModelNode[]; beams: ModelBeam[]; sections: Record<string, ModelSection> } {
  const nodes: ModelNode[] = [];
  const beams: ModelBeam[] = [];
  const sections: Record<string, ModelSection> = {};
  for (const id of ids) {
    const post = postById.get(id);
    if (post === undefined) continue;
    const { xMm: x, yMm: y } = post;
    nodes.push(
      { id: nodeName(id, "foot"), x, y, z: post.footZMm },
      { id: nodeName(id, "head"), x, y, z: post.headZMm },
    );
    const { section } = post.post;
    sections[section] = postSection(section, assumptions);
    beams.push({ id: nodeName(id, "post"), i: nodeName(id, "foot"), j: nodeName(id, "head"), section });
  }
  return { nodes, beams, sections };
}
