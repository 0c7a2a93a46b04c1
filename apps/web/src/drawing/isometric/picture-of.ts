import { isometricModel, pictureEye, type EyePlace, type IsometricModel } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";

/** The last picture of each scheme: the view and the leaders that end on it ask for the same one. */
const last = new WeakMap<Scheme, { place: EyePlace; model: IsometricModel }>();

/** The whole as seen from a place. */
export function pictureOf(scheme: Scheme, place: EyePlace): IsometricModel {
  const kept = last.get(scheme);
  if (kept?.place.turnMdeg === place.turnMdeg && kept.place.tiltMdeg === place.tiltMdeg) return kept.model;
  const model = isometricModel(scheme, pictureEye(place));
  last.set(scheme, { place, model });
  return model;
}
