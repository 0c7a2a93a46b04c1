import type { FreeLoad } from "@cornerway/schema";
import type { PartField } from "../part/part-field.ts";
import { beamFields, lockFields, postFields, seatFields, tieFields } from "./added-steel-fields.ts";
import { basisFields, hazardFields, sheetWallFields } from "./basis-fields.ts";
import { padFields } from "./ground-fields.ts";
import { freeLoadFields } from "./load-fields.ts";
import { openingFields } from "./opening-fields.ts";
import { overrideFields, unitFields, useField } from "./unit-fields.ts";

/** The properties people state of an element, whatever it is. */
export function fieldsOf(element: object): readonly PartField[] {
  if ("hazards" in element) return [...hazardFields, ...basisFields, ...sheetWallFields("cap raised")];
  if ("type" in element) return unitFields;
  if ("sillUm" in element) return openingFields;
  if ("packingUm" in element) return seatFields;
  if ("carries" in element) return tieFields;
  if ("fitting" in element) return lockFields;
  if ("from" in element) return beamFields;
  if ("baseZUm" in element) return postFields;
  if ("depthUm" in element) return padFields;
  if ("occupancy" in element) return [useField];
  if ("elementId" in element) return overrideFields("member" in element);
  return isShape(element) ? freeLoadFields(element.shape) : [];
}

const isShape = (element: object): element is { shape: FreeLoad["shape"] } =>
  "shape" in element && (element.shape === "point" || element.shape === "line" || element.shape === "area");
