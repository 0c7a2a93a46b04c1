import type { Certainty } from "@cornerway/schema";
import type { OpenSection } from "./open-section.ts";
import type { SectionPoint } from "./thin-walled-section.ts";

/** Where a section's numbers are from. */
export type SectionOrigin = { readonly name: string; readonly source: string; readonly certainty: Certainty };

/** Axis x is the strong one (bending in the plane of the depth), y the weak one. */
export type PlaneProperties = {
  readonly areaMm2: number;
  readonly ixMm4: number;
  readonly iyMm4: number;
  readonly sxMm3: number;
  readonly syMm3: number;
  readonly zxMm3: number;
  readonly zyMm3: number;
  readonly rxMm: number;
  readonly ryMm: number;
  readonly jMm4: number;
};

/** Square or rectangular tube. `wallMm` is the thickness to design with. */
export type TubeSection = SectionOrigin &
  PlaneProperties & {
    readonly kind: "tube";
    readonly depthMm: number;
    readonly widthMm: number;
    readonly wallMm: number;
    /** Flat part of the walls, along the depth and along the width. */
    readonly flatDepthMm: number;
    readonly flatWidthMm: number;
    /** How it is made: decides nothing but the name of the clause. */
    readonly made: "structural tube" | "container rail";
  };

/** Rolled I shape. `kMm` is the distance from the outer face to the toe of the fillet, where a source gives it. */
export type ISection = SectionOrigin &
  PlaneProperties & {
    readonly kind: "I";
    readonly depthMm: number;
    readonly webMm: number;
    readonly flangeWidthMm: number;
    readonly flangeMm: number;
    readonly kMm?: number;
    readonly cwMm6: number;
  };

/** Rolled channel. */
export type ChannelSection = SectionOrigin &
  PlaneProperties & {
    readonly kind: "channel";
    readonly depthMm: number;
    readonly webMm: number;
    readonly flangeWidthMm: number;
    readonly flangeMm: number;
    readonly centroidFromBackMm: number;
    readonly cwMm6: number;
  };

/** Equal-leg angle. */
export type AngleSection = SectionOrigin & {
  readonly kind: "angle";
  readonly legMm: number;
  readonly thicknessMm: number;
  readonly areaMm2: number;
  readonly iMm4: number;
  readonly sMm3: number;
  readonly rMm: number;
  readonly rzMm: number;
};

/** Section pressed from sheet. `outline` is the centreline in order; x across, y up, as it stands in the container. */
export type PressedSection = SectionOrigin &
  OpenSection & {
    readonly kind: "pressed";
    readonly outline: readonly SectionPoint[];
    readonly thicknessMm: number;
  };

export type Section = TubeSection | ISection | ChannelSection | AngleSection | PressedSection;
