import { placeContainer } from "@cornerway/engine";
import type { CollectionName, ElementOf, FreeLoad, Operation, PointMm, Scheme } from "@cornerway/schema";
import { listOfElement, writes } from "./element-operations.ts";
import { layElement } from "./lay-element.ts";
import { shiftedBy } from "./laying.ts";

const um = (mm: number) => Math.round(mm * 1000);

/** Moves a beam, seat, tie or free load by a way in the site; empty for what has no place of its own to be moved to. */
export function shiftElement(scheme: Scheme, id: string, by: PointMm): Operation[] {
  const name = listOfElement(scheme, id);
  switch (name) {
    case "beams":
    case "seats":
    case "ties":
      return shifted(scheme, name, id, by);
    case "freeLoads":
      return scheme.freeLoads.filter((load) => load.id === id).map((load) => shiftLoad(scheme, load, by));
    default:
      return [];
  }
}

function shifted<N extends CollectionName>(scheme: Scheme, name: N, id: string, by: PointMm): Operation[] {
  const laying = shiftedBy(um(by.xMm), um(by.yMm), um(by.zMm));
  const elements: readonly ElementOf<N>[] = scheme[name];
  return elements
    .filter((element) => element.id === id)
    .map((element) => writes[name].change(layElement(scheme, name, element, laying)));
}

/** A load lies on its unit: the way is taken along the unit's own axes. */
function shiftLoad(scheme: Scheme, load: FreeLoad, by: PointMm): Operation {
  const unit = scheme.containers.find(({ id }) => id === load.containerId);
  const { cos, sin } = unit === undefined ? { cos: 1, sin: 0 } : placeContainer(unit).frame;
  const alongUm = um(by.xMm * cos + by.yMm * sin);
  const acrossUm = um(by.yMm * cos - by.xMm * sin);
  const moved = { ...load, xUm: load.xUm + alongUm, yUm: load.yUm + acrossUm };
  return writes.freeLoads.change(
    moved.shape === "line" ? { ...moved, toXUm: moved.toXUm + alongUm, toYUm: moved.toYUm + acrossUm } : moved,
  );
}
