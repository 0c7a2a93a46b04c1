import type { Beam, Post } from "@cornerway/schema";
import { findSection } from "../catalog/sections/find-section.ts";
import { kgPerM, plateKg } from "./steel-mass.ts";
import { lineOf, steelLine, type TakenOff } from "./take-off-line.ts";
import { roundEndM } from "./weld-length.ts";

/** Head and foot plate of a post. Common practice, no published source. */
const postPlateMm = { long: 200, wide: 200, thick: 12 };

export const postTakeOff = ({ id, section, baseZUm, topZUm }: Post): TakenOff =>
  barTakeOff({ id, section, lengthM: (topZUm - baseZUm) / 1e6, plates: 2 });

export function beamTakeOff({ id, section, from, to }: Beam): TakenOff {
  const [dx, dy, dz] = [to.xUm - from.xUm, to.yUm - from.yUm, to.zUm - from.zUm];
  return barTakeOff({ id, section, lengthM: Math.sqrt(dx * dx + dy * dy + dz * dz) / 1e6, plates: 0 });
}

type Bar = { id: string; section: string; lengthM: number; plates: number };

/** A bar set on site: its steel, plates welded on in the shop, both ends welded on site. */
function barTakeOff({ id, section: name, lengthM, plates }: Bar): TakenOff {
  const line = lineOf(id, null, "site");
  const section = findSection(name);
  const rest = [line("crane lift", 1, "each"), line("engineering", 1, "each")];
  if (section === undefined) return { lines: rest, notKnown: [{ elementId: id, section: name }] };
  const steel = [
    steelLine(line, section.name, lengthM * kgPerM(section)),
    ...(plates > 0 ? [steelLine(line, "plate", plates * plateKg(postPlateMm))] : []),
  ];
  return { lines: [...steel, line("weld of 5 mm", 2 * roundEndM(section), "m"), ...rest], notKnown: [] };
}
