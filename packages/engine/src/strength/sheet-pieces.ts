import { folds } from "../catalog/sections/corrugated-sheet.ts";
import type { ModelNode } from "../model/analytical-model.ts";
import type { UnitFragment } from "../model/building-model.ts";
import { bareEdgeSaid, hasBareEdge } from "../model/bare-edges.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import type { SheetPiece } from "./sheet-part.ts";
import type { SheetStrip } from "./strip-flows.ts";

type Piece = Omit<SheetPiece, "ownerId">;
type SheetedWall = "left" | "right" | "front" | "door";
type Cell = {
  readonly id: string;
  readonly wall: SheetedWall;
  readonly from: number;
  readonly to: number;
  readonly heightMm: number;
};

/** The sheets of the walls in pieces without a full-height gap; over and under a window they go on. */
export function sheetPieces(fragment: UnitFragment, lines: UnitLines): Piece[] {
  const strips = wallStrips(fragment, lines);
  return (["left", "right", "front"] as const).flatMap((wall) =>
    unbroken(strips.get(wall) ?? []).map((own): Piece => {
      const [first, last] = [own[0], own.at(-1)];
      return {
        element: wall === "front" ? "end sheet" : "side sheet",
        place: `${wall} ${metres(first?.from ?? 0)}–${metres(last?.to ?? 0)} m`,
        fold: wall === "front" ? folds.end : folds.side,
        thicknessMm: wall === "front" ? 2 : 1.6,
        heightMm: lines.topRailMm - lines.bottomRailMm,
        strips: own,
        ...(meetsBareEdge(lines, wall, first?.from ?? 0, last?.to ?? 0) && { said: bareEdgeSaid }),
      };
    }),
  );
}

/** Whether an opening of the wall that is not framed lies in this stretch of it, or at its end. */
const meetsBareEdge = ({ openings, lengthMm, widthMm }: UnitLines, wall: SheetedWall, from: number, to: number) =>
  openings.some(
    (cut) =>
      cut.wall === wall &&
      hasBareEdge(cut, wall === "front" ? widthMm : lengthMm) &&
      cut.u0 < to + 1 &&
      cut.u1 > from - 1,
  );

/** The strips of each wall from end to end; of the doors where they are welded shut. */
export function wallStrips({ panels, nodes }: UnitFragment, lines: UnitLines): Map<SheetedWall, PlacedStrip[]> {
  const places = new Map(nodes.map((node) => [node.id, node]));
  const cells = panels
    .filter(({ id }) => id.startsWith("sheet#") || id.startsWith("doors#"))
    .map(({ id, nodes: [a, b, , d] }) => cellOf(id, places.get(a), places.get(b), places.get(d), lines));
  return new Map(walls.map((wall) => [wall, stripsOf(cells.filter((cell) => cell.wall === wall))]));
}

const walls: readonly SheetedWall[] = ["left", "right", "front", "door"];

function cellOf(
  id: string,
  a: ModelNode | undefined,
  b: ModelNode | undefined,
  d: ModelNode | undefined,
  { lengthMm, widthMm }: UnitLines,
): Cell {
  if (a === undefined || b === undefined || d === undefined) throw new RangeError(`panel ${id} has no corners`);
  const heightMm = d.z - a.z;
  // beside the edge of an opening a cell of a side may be narrower than a millimetre
  const across = Math.abs(b.x - a.x) < Math.abs(b.y - a.y);
  if (across) return { id, wall: a.x < 0 ? "front" : "door", from: a.y + widthMm / 2, to: b.y + widthMm / 2, heightMm };
  const wall = a.y > 0 ? "left" : "right";
  return { id, wall, from: a.x + lengthMm / 2, to: b.x + lengthMm / 2, heightMm };
}

/** A strip with its place from the first post axis of its wall, mm. */
export type PlacedStrip = SheetStrip & { readonly from: number; readonly to: number };

function stripsOf(cells: readonly Cell[]): PlacedStrip[] {
  const columns = new Map<number, Cell[]>();
  for (const cell of cells) columns.set(cell.from, [...(columns.get(cell.from) ?? []), cell]);
  return [...columns.values()]
    .map((panels): PlacedStrip => {
      const [{ from, to } = { from: 0, to: 0 }] = panels;
      return { from, to, widthMm: to - from, panels };
    })
    .toSorted((a, b) => a.from - b.from);
}

function unbroken(strips: readonly PlacedStrip[]): PlacedStrip[][] {
  const pieces: PlacedStrip[][] = [];
  for (const strip of strips) {
    const piece = pieces.at(-1);
    if (piece !== undefined && Math.abs((piece.at(-1)?.to ?? NaN) - strip.from) < 1) piece.push(strip);
    else pieces.push([strip]);
  }
  return pieces;
}

const metres = (mm: number): string => (Math.round(mm / 10) / 100).toFixed(2);
