import type { ModelSection } from "../model/analytical-model.ts";
import { memberAxes, type MemberAxes } from "../model/member-axes.ts";
import { panelAxes, type PanelAxes } from "../model/panel-axes.ts";
import { sameNumbers } from "../numerics/same-graph.ts";
import { minus, type Vector } from "../numerics/vector.ts";
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
  private readonly lineAxes = new Map<number, AxesAlong[]>();
  private readonly sheetAxes = new Map<number, AxesAcross[]>();
  private kinds = 0;

  /** To be asked between two models: whoever makes many must not keep every kind there ever was. */
  forgetIfMany(): void {
    if (this.kinds <= KINDS_KEPT) return;
    this.kinds = this.sections.length = 0;
    this.members.clear();
    this.panels.clear();
    this.lineAxes.clear();
    this.sheetAxes.clear();
  }

  /** Axes of a member, which depend on where its end lies from its start alone; null where it has none. */
  memberAxes(start: Vector, end: Vector, up: Vector | undefined): MemberAxes | null {
    const x = end[0] - start[0];
    const y = end[1] - start[1];
    const z = end[2] - start[2];
    const others = under(this.lineAxes, x, () => []);
    for (const one of others) if (one.y === y && one.z === z && sameArm(one.up ?? null, up ?? null)) return one.axes;
    const axes = memberAxes(start, end, up);
    if (axes !== null) others.push({ y, z, up, axes });
    return axes;
  }

  /** Axes of a sheet, which depend on where its other corners lie from the first alone; null where it is no rectangle. */
  panelAxes(corners: readonly [Vector, Vector, Vector, Vector]): PanelAxes | null {
    const [bl, br, tr, tl] = corners;
    const others = under(this.sheetAxes, tr[0] - bl[0], () => []);
    for (const one of others)
      if (liesBy(tr, bl, one.across) && liesBy(br, bl, one.bottom) && liesBy(tl, bl, one.left)) return one.axes;
    const axes = panelAxes(corners);
    if (axes !== null) others.push({ across: minus(tr, bl), bottom: minus(br, bl), left: minus(tl, bl), axes });
    return axes;
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

interface AxesAlong {
  readonly y: number;
  readonly z: number;
  readonly up: Vector | undefined;
  readonly axes: MemberAxes;
}

interface AxesAcross {
  readonly across: Vector;
  readonly bottom: Vector;
  readonly left: Vector;
  readonly axes: PanelAxes;
}

const liesBy = (place: Vector, from: Vector, by: Vector): boolean =>
  place[0] - from[0] === by[0] && place[1] - from[1] === by[1] && place[2] - from[2] === by[2];

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
    (a.axes === b.axes || (sameNumbers(a.axes.x, b.axes.x) && sameNumbers(a.axes.z, b.axes.z))) &&
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
    (a.axes === b.axes || (sameNumbers(a.axes.e1, b.axes.e1) && sameNumbers(a.axes.e2, b.axes.e2)))
  );
}
