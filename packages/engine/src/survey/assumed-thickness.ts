import type { MemberName } from "@cornerway/schema";
import { containerMembers } from "../catalog/sections/container-members.ts";

/** Thickness of steel that strength takes of a generic container where nothing was measured, mm; null where it takes none. */
const assumedMm: Readonly<Record<MemberName, number | null>> = {
  "corner post": containerMembers["front corner post"].thicknessMm,
  "top side rail": containerMembers["top side rail"].wallMm,
  "bottom side rail": containerMembers["bottom side rail"].thicknessMm,
  "top end rail": containerMembers["front header"].wallMm,
  "bottom end rail": containerMembers["front sill"].thicknessMm,
  // a box of a pressed U of 4.0 and a plate of 3.0, both taken as 3.0
  "door header": 3,
  "door sill": containerMembers["door sill"].thicknessMm,
  "cross member": containerMembers["cross member"].thicknessMm,
  "corner fitting": null,
};

export function assumedThicknessUm(member: MemberName): number | null {
  const mm = assumedMm[member];
  return mm === null ? null : Math.round(mm * 1000);
}
