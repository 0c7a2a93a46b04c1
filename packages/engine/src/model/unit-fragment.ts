import type { UnitFragment } from "./building-model.ts";
import { drawFloor, drawRoof } from "./draw-floor-and-roof.ts";
import { drawEnd, drawSide } from "./draw-walls.ts";
import { panelOf, type DrawnSheet } from "./drawn-sheet.ts";
import type { LoadCarrier } from "./load-carrier.ts";
import { UnitDraft } from "./unit-draft.ts";
import type { EndName, SideName, TiedPlace, UnitLines, UnitSeat } from "./unit-lines.ts";

/** The lines of a container with the names under which the rest of the building finds its bearing points. */
export interface BuiltUnit {
  readonly fragment: UnitFragment;
  /** Of each of its panels. */
  readonly sheets: readonly DrawnSheet[];
  readonly carriers: readonly LoadCarrier[];
  readonly halfWidthMm: number;
  /** Nodes on the underside and on the top of the four corner posts: front or door end, left or right. */
  readonly corners: (end: EndName, side: SideName, level: "foot" | "head") => string;
  /** Bearing point of a seat, or of the foot of an added post (`rail: "bottom"`). */
  readonly bearingPoint: (seat: UnitSeat) => string;
  readonly tiedPoint: (tied: TiedPlace) => string;
  /** Nodes of a seat's stub, at its rail and where it bears, and its stiffness along, N/mm. */
  readonly stub: (seat: UnitSeat) => { readonly rail: string; readonly point: string; readonly stiffness: number };
}

/** Builds the line model of one container. `key` must change whenever `lines` does. */
export function unitFragment(lines: UnitLines, key: string): BuiltUnit {
  const draft = new UnitDraft(lines);
  drawPosts(draft);
  drawSide(draft, "left");
  drawSide(draft, "right");
  drawEnd(draft, "front");
  drawEnd(draft, "door");
  drawFloor(draft);
  drawRoof(draft);
  drawStubs(draft);
  for (const tied of lines.ties ?? []) retain(draft, draft.tiedPoint(tied));
  const { beams, panels, sheets, retained, carriers, book } = draft;
  const sections = { ...lines.sections, ...draft.postSections };
  const fragment: UnitFragment = { key, nodes: book.nodes, sections, beams, panels, retained };
  return {
    fragment,
    sheets,
    carriers,
    halfWidthMm: lines.widthMm / 2,
    corners: draft.corner,
    bearingPoint: draft.bearingPoint,
    tiedPoint: draft.tiedPoint,
    stub: (seat) => stubOf(draft, seat),
  };
}

/** The same container with the sheets of these lines, which differ from its own in their stiffness alone. */
export function withSheets(built: BuiltUnit, lines: UnitLines, key: string): BuiltUnit {
  const { fragment, sheets } = built;
  const panels = fragment.panels.map((panel, n) => {
    const sheet = sheets[n];
    return sheet === undefined ? panel : panelOf(panel, sheet, lines);
  });
  return { ...built, fragment: { ...fragment, key, panels } };
}

function drawPosts(draft: UnitDraft): void {
  const { heightMm, lengthMm, ties = [] } = draft.lines;
  for (const end of ["front", "door"] as const) {
    for (const side of ["left", "right"] as const) {
      const tied = ties.flatMap((one) => ("zMm" in one && one.end === end && one.side === side ? [one.zMm] : []));
      const rows = [...draft.grids[side].rows, ...(end === "front" ? draft.grids.front.rows : [])];
      const levels = [0, heightMm, ...rows, ...tied];
      const points = levels.toSorted((a, b) => a - b).map((z) => draft.place(side, end === "front" ? 0 : lengthMm, z));
      draft.addChain("post", points, "post");
      draft.retained.push(draft.corner(end, side, "foot"), draft.corner(end, side, "head"));
    }
  }
}

function retain({ retained }: UnitDraft, node: string): void {
  if (!retained.includes(node)) retained.push(node);
}

/** Stubs of post section from the rails to the bearing planes, at seats and under added posts. */
function drawStubs(draft: UnitDraft): void {
  const { seats, posts } = draft.lines;
  const feet = posts.filter(({ footed }) => footed).map(({ side, u }): UnitSeat => ({ side, u, rail: "bottom" }));
  for (const seat of [...seats, ...feet]) {
    const { rail, point } = stubOf(draft, seat);
    if (draft.retained.includes(point)) continue;
    draft.addBeam("stub", rail, point, "post");
    draft.retained.push(point);
  }
}

function stubOf(draft: UnitDraft, seat: UnitSeat): ReturnType<BuiltUnit["stub"]> {
  const { bottomRailMm, topRailMm, heightMm, sections } = draft.lines;
  const bottom = seat.rail === "bottom";
  const lengthMm = bottom ? bottomRailMm : heightMm - topRailMm;
  return {
    rail: draft.railPoint(seat.side, seat.u, bottom ? bottomRailMm : topRailMm),
    point: draft.bearingPoint(seat),
    stiffness: (sections.post.E * sections.post.A) / lengthMm,
  };
}
