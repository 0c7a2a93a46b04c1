import type { FreedomName, ModelBeam, ModelPanel, ModelSection } from "./analytical-model.ts";
import type { UnitFragment } from "./building-model.ts";
import type { LoadCarrier, LoadedFace } from "./load-carrier.ts";
import { NodeBook } from "./node-book.ts";
import type { EndName, SheetStiffness, SideName, UnitLines, UnitOpening, UnitSeat, WallName } from "./unit-lines.ts";
import { wallGrid, type WallGrid } from "./wall-grid.ts";

/** The lines of a container with the names under which the rest of the building finds its bearing points. */
export interface BuiltUnit {
  readonly fragment: UnitFragment;
  readonly carriers: readonly LoadCarrier[];
  /** Nodes on the underside and on the top of the four corner posts: front or door end, left or right. */
  readonly corners: (end: "front" | "door", side: SideName, level: "foot" | "head") => string;
  /** Bearing point of a seat, or of the foot of an added post (`rail: "bottom"`), at u from the front post axis. */
  readonly bearingPoint: (seat: UnitSeat) => string;
}

/** Builds the line model of one container. `key` must change whenever `lines` does. */
export function unitFragment(lines: UnitLines, key: string): BuiltUnit {
  const builder = new UnitBuilder(lines);
  builder.build();
  const fragment: UnitFragment = {
    key,
    nodes: builder.book.nodes,
    sections: { ...lines.sections, ...builder.postSections },
    beams: builder.beams,
    panels: builder.panels,
    retained: builder.retained,
  };
  return { fragment, carriers: builder.carriers, corners: builder.corner, bearingPoint: builder.bearingPoint };
}

/** Strips across the front wall and along the end rails. */
const END_STRIPS = 6;
const PINNED: readonly FreedomName[] = ["ry"];

class UnitBuilder {
  readonly book = new NodeBook();
  readonly beams: ModelBeam[] = [];
  readonly panels: ModelPanel[] = [];
  readonly carriers: LoadCarrier[] = [];
  readonly retained: string[] = [];
  readonly postSections: Record<string, ModelSection> = {};
  private readonly lines: UnitLines;
  private readonly grids: Record<WallName, WallGrid>;

  constructor(lines: UnitLines) {
    this.lines = lines;
    this.grids = { left: this.sideGrid("left"), right: this.sideGrid("right"), front: this.frontGrid() };
  }

  build(): void {
    this.addPosts();
    for (const side of ["left", "right"] as const) this.addSide(side);
    this.addEnd("front");
    this.addEnd("door");
    this.addFloor();
    this.addRoof();
    this.addStubs();
  }

  readonly corner = (end: "front" | "door", side: SideName, level: "foot" | "head"): string => {
    return this.place(side, end === "front" ? 0 : this.lines.lengthMm, level === "foot" ? 0 : this.lines.heightMm);
  };

  readonly bearingPoint = ({ side, rail, u }: UnitSeat): string => {
    return this.railPoint(side, u, rail === "bottom" ? 0 : this.lines.heightMm);
  };

  private railPoint(side: SideName | EndName, u: number, z: number): string {
    if (side === "left" || side === "right") return this.place(side, u, z);
    const { lengthMm, widthMm } = this.lines;
    return this.book.at(side === "front" ? -lengthMm / 2 : lengthMm / 2, u - widthMm / 2, z);
  }

  /** A point of a side's post line: u from the front post axis. */
  private place(side: SideName, u: number, z: number): string {
    return this.book.at(u - this.lines.lengthMm / 2, this.across(side), z);
  }

  private across(side: SideName): number {
    return side === "left" ? this.lines.widthMm / 2 : -this.lines.widthMm / 2;
  }

  private sideGrid(side: SideName): WallGrid {
    const { lengthMm, floorBays, posts, seats } = this.lines;
    const bearing = [
      ...seats.filter((seat) => seat.side === side),
      ...posts.filter((post) => post.side === side && post.footed),
    ];
    // what stands off the corners comes first, so that a cross member beside it joins its line and not the other way round
    const stations = [
      ...bearing.map(({ u }) => u),
      ...posts.filter((post) => post.side === side).map(({ u }) => u),
      ...Array.from({ length: floorBays - 1 }, (_, n) => (lengthMm * (n + 1)) / floorBays),
    ];
    const offCorners = this.sheeted(side) ? bearing.map(({ u }) => u) : [];
    return wallGrid({ ...this.wallShape(side, lengthMm), stations, offCorners });
  }

  private sheeted(side: SideName): boolean {
    const { lengthMm, openings } = this.lines;
    return !openings.some((cut) => cut.wall === side && cut.fullHeight && cut.u0 <= 0 && cut.u1 >= lengthMm);
  }

  private frontGrid(): WallGrid {
    const { widthMm } = this.lines;
    const seats = this.endSeats("front");
    return wallGrid({ ...this.wallShape("front", widthMm), stations: this.endStations(), offCorners: seats });
  }

  private endStations(): number[] {
    return Array.from({ length: END_STRIPS - 1 }, (_, n) => (this.lines.widthMm * (n + 1)) / END_STRIPS);
  }

  private endSeats(end: EndName): number[] {
    return this.lines.seats.filter(({ side }) => side === end).map(({ u }) => u);
  }

  private doorColumns(): number[] {
    const { widthMm } = this.lines;
    return [...new Set([0, widthMm, ...this.endStations(), ...this.endSeats("door")])].sort((a, b) => a - b);
  }

  private wallShape(wall: WallName, lengthMm: number) {
    const { bottomRailMm, topRailMm, openings } = this.lines;
    return { lengthMm, bottomMm: bottomRailMm, topMm: topRailMm, cuts: openings.filter((cut) => cut.wall === wall) };
  }

  private addBeam(kind: string, i: string, j: string, section: string, more: Partial<ModelBeam> = {}): string {
    const id = `${kind}#${this.beams.length + 1}`;
    this.beams.push({ id, i, j, section, ...more });
    return id;
  }

  private addPosts(): void {
    const { heightMm, lengthMm } = this.lines;
    for (const end of ["front", "door"] as const) {
      for (const side of ["left", "right"] as const) {
        const rows = [0, heightMm, ...this.grids[side].rows, ...(end === "front" ? this.grids.front.rows : [])];
        const levels = [...new Set(rows)].sort((a, b) => a - b);
        const points = levels.map((z) => this.place(side, end === "front" ? 0 : lengthMm, z));
        this.chain("post", points, "post");
        this.retained.push(this.corner(end, side, "foot"), this.corner(end, side, "head"));
      }
    }
  }

  private chain(kind: string, points: readonly string[], section: string, more: Partial<ModelBeam> = {}): string[] {
    return points.slice(1).map((point, n) => this.addBeam(kind, points[n] ?? "", point, section, more));
  }

  private addSide(side: SideName): void {
    const grid = this.grids[side];
    const at = (column: number, row: number): string =>
      this.place(side, grid.columns[column] ?? 0, grid.rows[row] ?? 0);
    this.addSheet(grid, at, this.lines.sideSheet);
    this.addRail(side, grid, "bottom");
    this.addRail(side, grid, "top");
    this.addFrames(side, grid, at);
    for (const post of this.lines.posts.filter((one) => one.side === side)) {
      this.chain(
        "addedPost",
        grid.rows.map((z) => this.place(side, post.u, z)),
        this.postSection(post.section),
      );
    }
  }

  /** Height of wall whose pressure goes to a rail: split half-way between the rails' axes, which keeps its moment. */
  private wallShare(rail: "top" | "bottom"): number {
    const { bottomRailMm, topRailMm, heightMm } = this.lines;
    const middle = (bottomRailMm + topRailMm) / 2;
    return rail === "bottom" ? middle : heightMm - middle;
  }

  /** One name per different section. */
  private postSection(section: ModelSection): string {
    const same = Object.entries(this.postSections).find(
      ([, known]) => JSON.stringify(known) === JSON.stringify(section),
    );
    const name = same?.[0] ?? `addedPost${Object.keys(this.postSections).length + 1}`;
    this.postSections[name] = section;
    return name;
  }

  private addRail(side: SideName, grid: WallGrid, rail: "top" | "bottom"): void {
    const { bottomRailMm, topRailMm, widthMm, lengthMm } = this.lines;
    const z = rail === "top" ? topRailMm : bottomRailMm;
    grid.columns.slice(1).forEach((to, n) => {
      const from = grid.columns[n] ?? 0;
      const middle = (from + to) / 2;
      const over = this.lines.openings.filter((cut) => cut.wall === side && middle > cut.u0 && middle < cut.u1);
      if (over.some((cut) => (rail === "top" ? cut.cutsTopRail : cut.cutsBottomRail))) return;
      const ends = [this.place(side, from, z), this.place(side, to, z)] as const;
      const beam = this.addBeam(`${rail}Rail`, ...ends, `${rail}Rail`);
      // a header stands side by side with the rail, on the same line: each takes its share
      if (rail === "top" && over.some(({ framed, fullHeight }) => framed && fullHeight))
        this.addBeam("header", ...ends, "frame");
      const line = { beam, lengthMm: to - from, x: middle - lengthMm / 2, y: this.across(side), z };
      this.carriers.push({ ...line, face: side, stripMm: this.wallShare(rail) });
      if (rail === "top") this.carriers.push({ ...line, face: "roof", stripMm: widthMm / 2 });
    });
  }

  private addSheet(grid: WallGrid, at: (column: number, row: number) => string, sheet: SheetStiffness): void {
    for (let c = 0; c + 1 < grid.columns.length; c++) {
      for (let r = 0; r + 1 < grid.rows.length; r++) {
        if (grid.filled(c, r))
          this.addPanel("sheet", [at(c, r), at(c + 1, r), at(c + 1, r + 1), at(c, r + 1)], sheet, grid.layered);
      }
    }
  }

  private addPanel(kind: string, nodes: ModelPanel["nodes"], sheet: SheetStiffness, withAlong: boolean): void {
    const id = `${kind}#${this.panels.length + 1}`;
    const along = withAlong && sheet.along > 0 ? { Eh: sheet.along } : {};
    this.panels.push({ id, nodes, Gt: sheet.shear, ...(sheet.upright > 0 && { Ev: sheet.upright }), ...along });
  }

  /** Jambs of framed full-height openings; the four sides of framed windows with the folds that hold them in the wall's plane. */
  private addFrames(wall: WallName, grid: WallGrid, at: (column: number, row: number) => string): void {
    const last = { column: grid.columns.length - 1, row: grid.rows.length - 1 };
    for (const cut of this.lines.openings.filter((one) => one.wall === wall && one.framed)) {
      const [left, right] = [nearest(grid.columns, cut.u0), nearest(grid.columns, cut.u1)];
      const jambs = [left, right].filter((column) => column > 0 && column < last.column);
      const upright = (column: number, from: number, to: number): string[] =>
        indices(from, to).map((row) => at(column, row));
      if (cut.fullHeight) {
        for (const column of jambs) this.chain("jamb", upright(column, 0, last.row), "frame");
        continue;
      }
      const [bottom, top] = [nearest(grid.rows, cut.v0), nearest(grid.rows, cut.v1)];
      for (const column of jambs) {
        this.chain("jamb", upright(column, bottom, top), "windowFrame");
        this.addFold(wall, upright(column, 0, bottom));
        this.addFold(wall, upright(column, top, last.row).reverse());
      }
      for (const row of [bottom, top])
        this.chain(
          "lintel",
          indices(left, right).map((column) => at(column, row)),
          "windowFrame",
        );
    }
  }

  /** A strip of sheet from a rail, where it is pinned, to a window frame. */
  private addFold(wall: WallName, points: readonly string[]): void {
    const up = wall === "front" ? ({ up: [1, 0, 0] } as const) : {};
    points
      .slice(1)
      .forEach((point, n) =>
        this.addBeam("fold", points[n] ?? "", point, "fold", { ...up, ...(n === 0 && { rel_i: PINNED }) }),
      );
  }

  private addEnd(end: "front" | "door"): void {
    const { bottomRailMm, topRailMm, widthMm, lengthMm, floorBays } = this.lines;
    const x = end === "front" ? -lengthMm / 2 : lengthMm / 2;
    const grid = this.grids.front;
    const columns = end === "front" ? grid.columns : this.doorColumns();
    const at = (column: number, z: number): string => this.book.at(x, (columns[column] ?? 0) - widthMm / 2, z);
    for (const [z, rail] of [
      [bottomRailMm, "bottomRail"],
      [topRailMm, "topRail"],
    ] as const) {
      columns.slice(1).forEach((to, n) => {
        const from = columns[n] ?? 0;
        if (end === "front" && this.railCut(rail, (from + to) / 2)) return;
        const beam = this.addBeam(`${end}End${rail}`, at(n, z), at(n + 1, z), rail);
        const line = { beam, lengthMm: to - from, x, y: (from + to) / 2 - widthMm / 2, z };
        this.carriers.push({ ...line, face: end, stripMm: this.wallShare(rail === "topRail" ? "top" : "bottom") });
        if (rail === "bottomRail") this.carriers.push({ ...line, face: "floor", stripMm: lengthMm / floorBays / 2 });
      });
    }
    if (end === "door") return;
    const cell = (column: number, row: number): string => at(column, grid.rows[row] ?? 0);
    this.addSheet(grid, cell, this.lines.frontSheet);
    this.addFrames("front", grid, cell);
  }

  private railCut(rail: "bottomRail" | "topRail", u: number): boolean {
    const cut = (one: UnitOpening): boolean => (rail === "topRail" ? one.cutsTopRail : one.cutsBottomRail);
    return this.lines.openings.some((one) => one.wall === "front" && cut(one) && u > one.u0 && u < one.u1);
  }

  private addFloor(): void {
    const { lengthMm, widthMm, floorBays, bottomRailMm, floorShear } = this.lines;
    for (let n = 1; n < floorBays; n++) {
      const u = (lengthMm * n) / floorBays;
      const ends = [this.near("right", u, bottomRailMm), this.near("left", u, bottomRailMm)] as const;
      const beam = this.addBeam("cross", ends[0], ends[1], "crossMember", { rel_i: PINNED, rel_j: PINNED });
      this.carriers.push({
        beam,
        face: "floor",
        stripMm: lengthMm / floorBays,
        lengthMm: widthMm,
        x: u - lengthMm / 2,
        y: 0,
        z: bottomRailMm,
      });
    }
    this.addDiaphragm("floor", bottomRailMm, { shear: floorShear, upright: 0, along: 0 });
  }

  private addRoof(): void {
    const { topRailMm, roofShear, roofAcross } = this.lines;
    this.addDiaphragm("roof", topRailMm, { shear: roofShear, upright: roofAcross, along: 0 });
  }

  /** Between the side rails, bay by bay. */
  private addDiaphragm(kind: LoadedFace, z: number, sheet: SheetStiffness): void {
    const { lengthMm, floorBays } = this.lines;
    const stations = Array.from({ length: floorBays + 1 }, (_, n) => (lengthMm * n) / floorBays);
    stations.slice(1).forEach((to, n) => {
      const from = stations[n] ?? 0;
      const nodes: ModelPanel["nodes"] = [
        this.near("right", from, z),
        this.near("right", to, z),
        this.near("left", to, z),
        this.near("left", from, z),
      ];
      this.addPanel(kind, nodes, sheet, false);
    });
  }

  /** The rail node at a floor station: where a line of the wall took it over within a millimetre, that line. */
  private near(side: SideName, u: number, z: number): string {
    const { columns } = this.grids[side];
    return this.place(side, columns[nearest(columns, u)] ?? u, z);
  }

  /** Stubs of post section from the rails to the bearing planes, at seats and under added posts. */
  private addStubs(): void {
    const { seats, posts, bottomRailMm, topRailMm } = this.lines;
    const feet = posts.filter(({ footed }) => footed).map(({ side, u }): UnitSeat => ({ side, u, rail: "bottom" }));
    for (const seat of [...seats, ...feet]) {
      const point = this.bearingPoint(seat);
      if (this.retained.includes(point)) continue;
      const rail = this.railPoint(seat.side, seat.u, seat.rail === "bottom" ? bottomRailMm : topRailMm);
      this.addBeam("stub", rail, point, "post");
      this.retained.push(point);
    }
  }
}

function nearest(lines: readonly number[], value: number): number {
  return lines.reduce(
    (best, line, n) => (Math.abs(line - value) < Math.abs((lines[best] ?? NaN) - value) ? n : best),
    0,
  );
}

function indices(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, n) => from + n);
}
