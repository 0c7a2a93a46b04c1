import type { Opening } from "@cornerway/schema";
import { squareTube } from "./container-members.ts";
import { findSection } from "./find-section.ts";
import type { Section, TubeSection } from "./section.ts";

const bought = (tube: TubeSection): TubeSection => ({ ...tube, made: "structural tube" });

/**
 * What frames are made of where a scheme does not say; common practice, no published source. The tube of doors is the one the
 * reference walls are framed with (shared/reference/walls.json): a lighter one would leave their deflections unproved.
 */
export const frameTube = bought(squareTube("tube 100x100x6", 100, 6));
export const windowTube = bought(squareTube("tube 60x60x3", 60, 3));

/** Steel round an opening. */
export type OpeningFrame = { readonly jamb: Section; readonly header: Section; readonly sill: Section };

/** The frame drawn for an opening, else the stated tube of its use; a name the catalogue lacks is the stated tube. */
export function openingFrame({ use, framing }: Pick<Opening, "use" | "framing">): OpeningFrame {
  const tube = use === "window" ? windowTube : frameTube;
  const section = (name: string | undefined): Section => (name === undefined ? tube : (findSection(name) ?? tube));
  return { jamb: section(framing?.jamb), header: section(framing?.header), sill: section(framing?.sill) };
}
