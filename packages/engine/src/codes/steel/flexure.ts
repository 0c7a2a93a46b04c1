import { refused, type Resistance } from "../../working/resistance.ts";
import type { Beam } from "./beam.ts";
import { channelFlexure } from "./flexure-channel.ts";
import { strongAxisFlexure } from "./flexure-strong-axis.ts";
import { tubeFlexure } from "./flexure-tube.ts";
import { weakAxisFlexure } from "./flexure-weak-axis.ts";
import type { SteelBasis } from "./steel-basis.ts";

/** Strength in bending about the strong axis, N·mm, by the clause of the shape (F2, F3, F7). */
export function strongFlexure(beam: Beam, basis: SteelBasis): Resistance {
  const { section } = beam;
  if (section.kind === "I") return strongAxisFlexure({ ...beam, section }, basis);
  if (section.kind === "channel") return channelFlexure({ ...beam, section }, basis);
  if (section.kind === "tube") return tubeFlexure({ ...beam, section }, "strong", basis);
  return refused("shape not covered by this check");
}

/** Strength in bending about the weak axis, N·mm, by the clause of the shape (F6, F7). */
export function weakFlexure(beam: Beam, basis: SteelBasis): Resistance {
  const { section } = beam;
  if (section.kind === "I" || section.kind === "channel") return weakAxisFlexure({ ...beam, section }, basis);
  if (section.kind === "tube") return tubeFlexure({ ...beam, section }, "weak", basis);
  return refused("shape not covered by this check");
}
