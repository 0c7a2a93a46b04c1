import type { PlacedContainer } from "@cornerway/engine";
import { ink } from "../../look/ink.ts";
import { rectToPx } from "../paper-to-px.ts";
import { rectPath } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { FlatFace } from "./unfolded-model.ts";

/** The four corner fittings of a face, solid and to size: what the dimensions are taken from. */
export function FlatFittings({ flat, placed, view }: { flat: FlatFace; placed: PlacedContainer; view: ViewTransform }) {
  const { fitting } = placed.dimensions;
  const { outline, face } = flat;
  const ends = face === "front" || face === "door";
  const wide = ends ? fitting.widthMm : fitting.lengthMm;
  const high = face === "roof" || face === "floor" ? fitting.widthMm : fitting.heightMm;
  const corners = [outline.u0Mm, outline.u1Mm - wide].flatMap((u0Mm) =>
    [outline.z0Mm, outline.z1Mm - high].map((z0Mm) => ({ u0Mm, u1Mm: u0Mm + wide, z0Mm, z1Mm: z0Mm + high })),
  );
  return <path d={corners.map((corner) => rectPath(rectToPx(view, corner))).join("")} fill={ink.ink} />;
}
