import { containerDimensions } from "@cornerway/engine";
import type {
  CollectionName,
  Container,
  ElementOf,
  Face,
  FittingName,
  FreeLoad,
  Opening,
  Scheme,
} from "@cornerway/schema";
import type { Laying, PlaceUm } from "./laying.ts";

type Lay<E> = (element: E, laying: Laying, unit: Container | undefined) => E;

/** Each kind of element laid elsewhere. What is measured on its unit changes only where left and right do. */
const lays: { readonly [N in CollectionName]: Lay<ElementOf<N>> } = {
  containers: (unit, laying) => ({ ...turned(unit, laying), zUm: unit.zUm + laying.riseUm }),
  posts: (post, laying) => ({
    ...turned(post, laying),
    baseZUm: post.baseZUm + laying.riseUm,
    topZUm: post.topZUm + laying.riseUm,
  }),
  pads: (pad, laying) => ({ ...turned(pad, laying), topZUm: pad.topZUm + laying.riseUm }),
  beams: (beam, laying) => ({ ...beam, from: spot(beam.from, laying), to: spot(beam.to, laying) }),
  openings: (opening, { mirrored }, unit) => (mirrored ? mirroredOpening(opening, unit) : opening),
  loads: (load) => load,
  freeLoads: (load, { mirrored }, unit) => (mirrored ? mirroredLoad(load, widthUmOf(unit)) : load),
  uses: (use) => use,
  seats: (seat, laying) => ({ ...seat, ...laying.place(seat) }),
  ties: (tie, laying) => spot(tie, laying),
  locks: (lock, { mirrored }) => (mirrored ? { ...lock, fitting: otherSide[lock.fitting] } : lock),
  overrides: (override) => override,
};

/** An element laid elsewhere; `scheme` holds the unit it hangs on. */
export function layElement<N extends CollectionName>(
  scheme: Scheme,
  name: N,
  element: ElementOf<N>,
  laying: Laying,
): ElementOf<N> {
  const unitId = "containerId" in element ? element.containerId : undefined;
  const lay: Lay<ElementOf<N>> = lays[name];
  return lay(
    element,
    laying,
    scheme.containers.find(({ id }) => id === unitId),
  );
}

const turned = <E extends PlaceUm & { turnMdeg: number }>(element: E, laying: Laying): E => ({
  ...element,
  ...laying.place(element),
  turnMdeg: laying.turn(element.turnMdeg),
});

const spot = <E extends PlaceUm & { zUm: number }>(at: E, laying: Laying): E => ({
  ...at,
  ...laying.place(at),
  zUm: at.zUm + laying.riseUm,
});

const widthUmOf = (unit: Container | undefined): number =>
  unit === undefined ? 0 : Math.round(containerDimensions(unit.type).widthMm * 1000);

/** Offsets of ends and sills of roof and floor are measured from the right side, which the mirror makes the left. */
function mirroredOpening(opening: Opening, unit: Container | undefined): Opening {
  const { face, offsetUm, sillUm, widthUm, heightUm } = opening;
  const across = widthUmOf(unit);
  if (face === "front" || face === "door") return { ...opening, offsetUm: across - offsetUm - widthUm };
  if (face === "roof" || face === "floor") return { ...opening, sillUm: across - sillUm - heightUm };
  const other: Face = face === "left" ? "right" : "left";
  return { ...opening, face: other };
}

function mirroredLoad(load: FreeLoad, acrossUm: number): FreeLoad {
  const yUm = acrossUm - load.yUm;
  switch (load.shape) {
    case "point":
      return { ...load, yUm, alongYN: -load.alongYN + 0 };
    case "line":
      return { ...load, yUm, toYUm: acrossUm - load.toYUm };
    case "area":
      return { ...load, yUm: yUm - load.widthUm };
  }
}

const otherSide: Readonly<Record<FittingName, FittingName>> = {
  "front-right": "front-left",
  "front-left": "front-right",
  "door-right": "door-left",
  "door-left": "door-right",
  "front-right-inner": "front-left-inner",
  "front-left-inner": "front-right-inner",
  "door-right-inner": "door-left-inner",
  "door-left-inner": "door-right-inner",
};
