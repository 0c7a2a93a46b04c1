import type { Face, MemberName } from "@cornerway/schema";
import type { ContainerDimensions, FaceRect } from "../catalog/container-dimensions.ts";

/** A member that must stay whole, as the strip it takes up on a face. */
export type ProtectedMember = { readonly member: MemberName; readonly strip: FaceRect };

/** The protected members seen on one face: all that lies between the sheet and the face's outline. */
export function protectedMembers(dimensions: ContainerDimensions, face: Face): ProtectedMember[] {
  const whole = dimensions.face(face);
  const sheet = dimensions.sheetZone(face);
  const names = memberNamesOf[face];
  return [
    { member: names.start, strip: { ...whole, u1: sheet.u0 } },
    { member: names.end, strip: { ...whole, u0: sheet.u1 } },
    { member: names.low, strip: { ...whole, v1: sheet.v0 } },
    { member: names.high, strip: { ...whole, v0: sheet.v1 } },
  ];
}

/** By side of the face: where u starts and ends, where v is low and high. */
const memberNamesOf: Record<Face, Record<"start" | "end" | "low" | "high", MemberName>> = {
  left: { start: "corner post", end: "corner post", low: "bottom side rail", high: "top side rail" },
  right: { start: "corner post", end: "corner post", low: "bottom side rail", high: "top side rail" },
  front: { start: "corner post", end: "corner post", low: "bottom end rail", high: "top end rail" },
  door: { start: "corner post", end: "corner post", low: "door sill", high: "door header" },
  roof: { start: "top end rail", end: "door header", low: "top side rail", high: "top side rail" },
  floor: { start: "bottom end rail", end: "door sill", low: "bottom side rail", high: "bottom side rail" },
};
