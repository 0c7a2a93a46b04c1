import type { ModelSection } from "../model/analytical-model.ts";
import { sameNumbers } from "../numerics/same-graph.ts";
import type { Vector } from "../numerics/vector.ts";
import { member, withNodes, type Member, type MemberFacts } from "./member.ts";
import { onNodes, shearPanel, type PanelFacts, type ShearPanel } from "./shear-panel.ts";

/**
 * Makes the members and sheets of one model. Those of one kind share one stiffness: of the seven hundred in a container one
 * in eight is of a kind of its own (measured).
 */
export class AlikeElements {
  private readonly members = new Map<ModelSection, Member[]>();
  private readonly panels: ShearPanel[] = [];

  member(facts: MemberFacts): Member {
    const others = this.members.get(facts.section) ?? [];
    const known = others.find((other) => sameMember(other.facts, facts));
    if (known !== undefined) return withNodes(known, facts);
    const made = member(facts);
    others.push(made);
    this.members.set(facts.section, others);
    return made;
  }

  panel(facts: PanelFacts): ShearPanel {
    const known = facts.arms === null ? this.panels.find((other) => samePanel(other.facts, facts)) : undefined;
    if (known !== undefined) return onNodes(known, facts);
    const made = shearPanel(facts);
    if (facts.arms === null) this.panels.push(made);
    return made;
  }
}

/** All but the nodes, the section being the same. */
function sameMember(a: MemberFacts, b: MemberFacts): boolean {
  return (
    a.axes.lengthMm === b.axes.lengthMm &&
    sameNumbers(a.axes.x, b.axes.x) &&
    sameNumbers(a.axes.z, b.axes.z) &&
    sameNumbers(a.released, b.released) &&
    sameArm(a.armI, b.armI) &&
    sameArm(a.armJ, b.armJ)
  );
}

const sameArm = (a: Vector | null, b: Vector | null): boolean =>
  a === b || (a !== null && b !== null && sameNumbers(a, b));

/** All but the nodes, both without arms. */
function samePanel(a: PanelFacts, b: PanelFacts): boolean {
  return (
    a.axes.widthMm === b.axes.widthMm &&
    a.axes.heightMm === b.axes.heightMm &&
    a.shearStiffness === b.shearStiffness &&
    a.uprightStiffness === b.uprightStiffness &&
    a.alongStiffness === b.alongStiffness &&
    sameNumbers(a.axes.e1, b.axes.e1) &&
    sameNumbers(a.axes.e2, b.axes.e2)
  );
}
