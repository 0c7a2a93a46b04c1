import type { FreeLoad, Scheme } from "@cornerway/schema";
import { faceFrame, pointOnFace } from "../geometry/face-frame.ts";
import { placeContainer, type PlacedContainer } from "../geometry/place.ts";
import { toMm } from "../units.ts";
import { evenPatch, type ActionLoad } from "./action-case.ts";

/** Loads someone put on floors and roofs, of one kind of action, as the model takes them. */
export const freeLoadsOf = (scheme: Scheme, kind: FreeLoad["case"]): ActionLoad[] =>
  scheme.freeLoads.filter((load) => load.case === kind).flatMap((load) => freeLoadOn(scheme, load));

export function freeLoadOn({ containers }: Scheme, load: FreeLoad): ActionLoad[] {
  const container = containers.find(({ id }) => id === load.containerId);
  if (container === undefined) throw new RangeError(`a load on ${load.containerId}, which is not there`);
  const placed = placeContainer(container);
  switch (load.shape) {
    case "point":
      return [pointOn(placed, load, toMm(load.xUm), toMm(load.yUm), load)];
    case "line":
      return lineOn(placed, load);
    case "area": {
      const [u0, v0] = [toMm(load.xUm), toMm(load.yUm)];
      const rect = { u0, v0, u1: u0 + toMm(load.lengthUm), v1: v0 + toMm(load.widthUm) };
      return [{ kind: "on", containerId: placed.id, surface: load.surface, patch: evenPatch(rect, load.pressurePa) }];
    }
  }
}

/** As forces at the middles of equal parts. */
function lineOn(placed: PlacedContainer, load: Extract<FreeLoad, { shape: "line" }>): ActionLoad[] {
  const [x, y] = [toMm(load.xUm), toMm(load.yUm)];
  const [dx, dy] = [toMm(load.toXUm) - x, toMm(load.toYUm) - y];
  const lengthMm = Math.sqrt(dx * dx + dy * dy);
  const parts = Math.max(1, Math.ceil(lengthMm / PART_MM));
  const downN = (load.downNPerM * lengthMm) / 1000 / parts;
  return Array.from({ length: parts }, (_, n) => (n + 0.5) / parts).map((at) =>
    pointOn(placed, load, x + at * dx, y + at * dy, { downN, alongXN: 0, alongYN: 0 }),
  );
}

/** About the spacing of cross members: nodes are no closer. */
const PART_MM = 300;

function pointOn(
  placed: PlacedContainer,
  { surface }: Pick<FreeLoad, "surface">,
  xMm: number,
  yMm: number,
  { downN, alongXN, alongYN }: { readonly downN: number; readonly alongXN: number; readonly alongYN: number },
): ActionLoad {
  const face = faceFrame(placed, surface);
  const { u, v } = face;
  return {
    kind: "point",
    elementId: placed.id,
    surface,
    at: pointOnFace(face, xMm, yMm),
    xN: alongXN * u.xMm + alongYN * v.xMm,
    yN: alongXN * u.yMm + alongYN * v.yMm,
    zN: -downN,
  };
}

/** All that a free load puts straight down, N. */
export function downOf(load: FreeLoad): number {
  switch (load.shape) {
    case "point":
      return load.downN;
    case "line": {
      const [dx, dy] = [toMm(load.toXUm - load.xUm), toMm(load.toYUm - load.yUm)];
      return (load.downNPerM * Math.sqrt(dx * dx + dy * dy)) / 1000;
    }
    case "area":
      return (load.pressurePa * toMm(load.lengthUm) * toMm(load.widthUm)) / 1e6;
  }
}
