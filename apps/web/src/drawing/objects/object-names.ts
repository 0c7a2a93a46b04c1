import { tagOf, type Scheme, type UnitSystem } from "@cornerway/schema";
import { drawnLength } from "../../units/drawn-length.ts";
import { elementsOf } from "@cornerway/schema";
import { loadFigure } from "./load-figure.ts";

/** The names added things are read out by: "seat S1 under T1 on F2, packing 40 mm". */
export function objectNames(scheme: Scheme, units: UnitSystem): Map<string, string> {
  const tags = new Map(elementsOf(scheme).map((element) => [element.id, tagOf(element) ?? element.id]));
  const tag = (id: string) => tags.get(id) ?? id;
  const small = (um: number) => (units === "US" ? drawnLength(um / 1000, units) : `${um / 1000} mm`);
  const long = (um: number) => (units === "US" ? drawnLength(um / 1000, units) : `${(um / 1_000_000).toFixed(2)} m`);
  return new Map([
    ...scheme.beams.map(
      ({ id, tag: own, section, from, to }) =>
        [id, `beam ${own}, ${section}, ${long(Math.hypot(to.xUm - from.xUm, to.yUm - from.yUm))} long`] as const,
    ),
    ...scheme.seats.map(
      ({ id, tag: own, upperId, lowerId, packingUm, stiffenerUm, heldDown }) =>
        [
          id,
          `seat ${own} under ${tag(upperId)} on ${tag(lowerId)}, packing ${small(packingUm)}${stiffenerUm === undefined ? "" : `, stiffener ${small(stiffenerUm)}`}${heldDown ? ", held down" : ""}`,
        ] as const,
    ),
    ...scheme.ties.map(
      ({ id, tag: own, aId, bId, carries }) =>
        [id, `tie ${own} between ${tag(aId)} and ${tag(bId)}, ${carries}`] as const,
    ),
    ...scheme.locks.map(
      ({ id, tag: own, containerId, fitting, kind }) =>
        [id, `${kind} ${own} under ${tag(containerId)}, ${fitting.replaceAll("-", " ")}`] as const,
    ),
    ...scheme.freeLoads.map(
      (load) =>
        [
          load.id,
          `load ${load.tag}, ${load.note}, ${loadFigure(load, units)} on the ${load.surface} of ${tag(load.containerId)}`,
        ] as const,
    ),
  ]);
}
