import type { ModelSection } from "../model/analytical-model.ts";
import { sameNumbers } from "../numerics/same-graph.ts";
import type { Vector } from "../numerics/vector.ts";
import { member, withNodes, type Member, type MemberFacts } from "./member.ts";
import { onNodes, shearPanel, type PanelFacts, type ShearPanel } from "./shear-panel.ts";

/**
 * Makes the members and sheets of models. Those of one kind share one stiffness: of the seven hundred in a container one in
 * eight is of a kind of its own (measured), and a container that was edited brings few that were not met before.
 */
export class AlikeElements {
  private readonly sections: ModelSection[] = [];
  private readonly members = new Map<ModelSection, Map<number, Member[]>>();
  private readonly panels = new Map<number, ShearPanel[]>();
  private kinds = 0;

  /** To be asked between two models: whoever makes many must not keep every kind there ever was. */
  forgetIfMany(): void {
    if (this.kinds <= KINDS_KEPT) return;
    this.kinds = this.sections.length = 0;
    this.members.clear();
    this.panels.clear();
  }

  member(facts: MemberFacts): Member {
    const ofSection = under(this.members, this.section(facts.section), () => new Map<number, Member[]>());
    const others = under(ofSection, facts.axes.lengthMm, () => []);
    const known = others.find((other) => sameMember(other.facts, facts));
    if (known !== undefined) return withNodes(known, facts);
    const made = member(facts);
    others.push(made);
    this.kinds++;
    return made;
  }

  panel(facts: PanelFacts): ShearPanel {
    if (facts.arms !== null) return shearPanel(facts);
    const others = under(this.panels, facts.axes.widthMm, () => []);
    const known = others.find((other) => samePanel(other.facts, facts));
    if (known !== undefined) return onNodes(known, facts);
    const made = shearPanel(facts);
    others.push(made);
    this.kinds++;
    return made;
  }

  /** Equal sections are one. */
  private section(section: ModelSection): ModelSection {
    const known = this.sections.find((other) => sameSection(other, section));
    if (known !== undefined) return known;
    this.sections.push(section);
    return section;
  }
}

/** Those of a few dozen edits. */
const KINDS_KEPT = 2000;

function under<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  let found = map.get(key);
  if (found === undefined) {
    found = make();
    map.set(key, found);
  }
  return found;
}

function sameSection(a: ModelSection, b: ModelSection): boolean {
  return (
    a === b ||
    (a.E === b.E &&
      a.G === b.G &&
      a.A === b.A &&
      a.Iy === b.Iy &&
      a.Iz === b.Iz &&
      a.J === b.J &&
      a.Asy === b.Asy &&
      a.Asz === b.Asz)
  );
}

/** All but the nodes, section and length being the same. */
function sameMember(a: MemberFacts, b: MemberFacts): boolean {
  return (
    sameNumbers(a.axes.x, b.axes.x) &&
    sameNumbers(a.axes.z, b.axes.z) &&
    sameNumbers(a.released, b.released) &&
    sameArm(a.armI, b.armI) &&
    sameArm(a.armJ, b.armJ)
  );
}

const sameArm = (a: Vector | null, b: Vector | null): boolean =>
  a === b || (a !== null && b !== null && sameNumbers(a, b));

/** All but the nodes, both without arms and of one width. */
function samePanel(a: PanelFacts, b: PanelFacts): boolean {
  return (
    a.axes.heightMm === b.axes.heightMm &&
    a.shearStiffness === b.shearStiffness &&
    a.uprightStiffness === b.uprightStiffness &&
    a.alongStiffness === b.alongStiffness &&
    sameNumbers(a.axes.e1, b.axes.e1) &&
    sameNumbers(a.axes.e2, b.axes.e2)
  );
}
