import type { ModelBeam, ModelPanel, ModelSection } from "./analytical-model.ts";
import type { LoadCarrier } from "./load-carrier.ts";
import { NodeBook } from "./node-book.ts";
import { panelOf, type DrawnSheet } from "./drawn-sheet.ts";
import { unitGrids, type UnitGrids } from "./unit-grids.ts";
import { twistHolds, type TwistHold } from "./twist-holds.ts";
import type { EndName, FrameBar, SideName, TiedPlace, UnitLines, UnitSeat } from "./unit-lines.ts";

/** One container while its lines are drawn: where its points are, and what has been drawn so far. */
export class UnitDraft {
  readonly lines: UnitLines;
  readonly grids: UnitGrids;
  readonly twistHolds: readonly TwistHold[];
  readonly book = new NodeBook();
  readonly beams: ModelBeam[] = [];
  readonly panels: ModelPanel[] = [];
  /** Of each panel. */
  readonly sheets: DrawnSheet[] = [];
  readonly carriers: LoadCarrier[] = [];
  readonly retained: string[] = [];
  readonly postSections: Record<string, ModelSection> = {};

  constructor(lines: UnitLines) {
    this.lines = lines;
    this.grids = unitGrids(lines);
    this.twistHolds = twistHolds(lines);
  }

  readonly corner = (end: EndName, side: SideName, level: "foot" | "head"): string => {
    return this.place(side, end === "front" ? 0 : this.lines.lengthMm, level === "foot" ? 0 : this.lines.heightMm);
  };

  readonly bearingPoint = ({ side, rail, u }: UnitSeat): string => {
    return this.railPoint(side, u, rail === "bottom" ? 0 : this.lines.heightMm);
  };

  /** The node of a member that a tie is made to. */
  readonly tiedPoint = (tied: TiedPlace): string => {
    const { lengthMm, bottomRailMm, topRailMm } = this.lines;
    if ("rail" in tied) return this.railPoint(tied.side, tied.u, tied.rail === "bottom" ? bottomRailMm : topRailMm);
    return this.place(tied.side, tied.end === "front" ? 0 : lengthMm, tied.zMm);
  };

  railPoint(side: SideName | EndName, u: number, z: number): string {
    if (side === "left" || side === "right") return this.place(side, u, z);
    const { lengthMm, widthMm } = this.lines;
    return this.book.at(side === "front" ? -lengthMm / 2 : lengthMm / 2, u - widthMm / 2, z);
  }

  /** A point of a side's post line: u from the front post axis. */
  place(side: SideName, u: number, z: number): string {
    return this.book.at(u - this.lines.lengthMm / 2, this.across(side), z);
  }

  across(side: SideName): number {
    return side === "left" ? this.lines.widthMm / 2 : -this.lines.widthMm / 2;
  }

  /** Height of wall whose pressure goes to a rail: split half-way between the rails' axes, which keeps its moment. */
  wallShare(rail: "top" | "bottom"): number {
    const { bottomRailMm, topRailMm, heightMm } = this.lines;
    const middle = (bottomRailMm + topRailMm) / 2;
    return rail === "bottom" ? middle : heightMm - middle;
  }

  addBeam(kind: string, i: string, j: string, section: string, more: Partial<ModelBeam> = {}): string {
    const id = `${kind}#${this.beams.length + 1}`;
    this.beams.push({ id, i, j, section, ...more });
    return id;
  }

  /** Members from point to point; points that fall together are one. */
  addChain(kind: string, points: readonly string[], section: string): void {
    const apart = points.filter((point, n) => point !== points[n - 1]);
    apart.slice(1).forEach((point, n) => this.addBeam(kind, apart[n] ?? "", point, section));
  }

  addPanel(kind: string, nodes: ModelPanel["nodes"], sheet: DrawnSheet): void {
    this.sheets.push(sheet);
    this.panels.push(panelOf({ id: `${kind}#${this.panels.length + 1}`, nodes }, sheet, this.lines));
  }

  /** Bars of frames go by the name of their section. */
  frameSection({ name, section }: FrameBar): string {
    this.postSections[name] = section;
    return name;
  }

  /** One name per different section of added posts. */
  postSection(section: ModelSection): string {
    const same = Object.entries(this.postSections).find(
      ([, known]) => JSON.stringify(known) === JSON.stringify(section),
    );
    const name = same?.[0] ?? `addedPost${Object.keys(this.postSections).length + 1}`;
    this.postSections[name] = section;
    return name;
  }
}
