import { openSection } from "./open-section.ts";
import { roundedTube } from "./rounded-tube.ts";
import type { PressedSection, SectionOrigin, TubeSection } from "./section.ts";
import type { SectionPoint } from "./thin-walled-section.ts";

const generic = {
  source: "generic purchase specifications of dry containers; assumed until measured",
  certainty: "common practice",
} as const;

/** Outside sizes of a pressed channel: depth, then the flanges at the head and at the foot. */
type ChannelSizes = {
  readonly depthMm: number;
  readonly headMm: number;
  readonly footMm: number;
  readonly thicknessMm: number;
};

/** Members of the generic dry container, by the name their check prints. Web upright, flanges to the right. */
export const containerMembers = {
  "bottom side rail, 20 ft": pressedChannel("channel 158x48x30x4.5", {
    depthMm: 158,
    headMm: 48,
    footMm: 30,
    thicknessMm: 4.5,
  }),
  "bottom side rail": pressedChannel("channel 162x48x30x4.5", {
    depthMm: 162,
    headMm: 48,
    footMm: 30,
    thicknessMm: 4.5,
  }),
  "cross member": pressedChannel("channel 122x45x40x4", { depthMm: 122, headMm: 45, footMm: 40, thicknessMm: 4 }),
  "cross member at a board joint": pressedChannel("channel 122x75x40x4", {
    depthMm: 122,
    headMm: 75,
    footMm: 40,
    thicknessMm: 4,
  }),
  "door post inner": pressedChannel("channel 113x40x12", { depthMm: 113, headMm: 40, footMm: 40, thicknessMm: 12 }),
  "front corner post": pressed(
    { name: "front post, outline assumed, t 6", ...generic },
    [at(60, 150), at(0, 150), at(0, 0), at(160, 0), at(160, 60)],
    6,
  ),
  "front sill": pressedChannel("pressed channel 150x46x46x4", { depthMm: 150, headMm: 46, footMm: 46, thicknessMm: 4 }),
  "door sill": pressedChannel("pressed channel 150x46x46x4.5", {
    depthMm: 150,
    headMm: 46,
    footMm: 46,
    thicknessMm: 4.5,
  }),
  "top side rail": squareTube("tube 60x60x3", 60, 3),
  "top side rail, heavy": squareTube("tube 60x60x4", 60, 4),
  "front header": squareTube("tube 60x60x3", 60, 3),
} as const satisfies Record<string, PressedSection | TubeSection>;

export type ContainerMemberName = keyof typeof containerMembers;

/** Rails of units of 20 ft and shorter are lower. */
const SHORT_MM = 7000;

/** The bottom side rail of a unit so long between its post axes, mm. */
export const bottomSideRail = (lengthMm: number): PressedSection =>
  lengthMm < SHORT_MM ? containerMembers["bottom side rail, 20 ft"] : containerMembers["bottom side rail"];

function at(xMm: number, yMm: number): SectionPoint {
  return { xMm, yMm };
}

function pressed(origin: SectionOrigin, outline: readonly SectionPoint[], thicknessMm: number): PressedSection {
  return { kind: "pressed", ...origin, outline, thicknessMm, ...openSection(outline, thicknessMm) };
}

/** Centreline of a channel with square corners, from the tip of the foot flange to the tip of the head flange. */
export function pressedChannel(name: string, { depthMm, headMm, footMm, thicknessMm }: ChannelSizes): PressedSection {
  const web = depthMm - thicknessMm;
  const flange = (outside: number): number => outside - thicknessMm / 2;
  return pressed(
    { name, ...generic },
    [at(flange(footMm), 0), at(0, 0), at(0, web), at(flange(headMm), web)],
    thicknessMm,
  );
}

/** Square tube with square corners: the model of the specification's figures. */
export function squareTube(name: string, sideMm: number, wallMm: number): TubeSection {
  return boxTube(name, { depthMm: sideMm, widthMm: sideMm, wallMm });
}

/** Rectangular tube with square corners. */
export function boxTube(
  name: string,
  { depthMm, widthMm, wallMm }: { readonly depthMm: number; readonly widthMm: number; readonly wallMm: number },
): TubeSection {
  return {
    kind: "tube",
    made: "container rail",
    name,
    ...generic,
    depthMm,
    widthMm,
    wallMm,
    flatDepthMm: depthMm - 3 * wallMm,
    flatWidthMm: widthMm - 3 * wallMm,
    ...roundedTube({ depthMm, widthMm, wallMm, cornerMm: 0 }),
  };
}

/**
 * Door header: a box of a pressed U of 4.0 and a plate of 3.0, both taken as 3.0. Outside sizes by the container's type;
 * a lower bound until it is measured.
 */
export const doorHeader = (depthMm: number, widthMm: number): TubeSection =>
  boxTube(`door header box ${depthMm}x${widthMm}x3, assumed`, { depthMm, widthMm, wallMm: 3 });

/** Common practice, no published source: the lower of the headers specified. */
export const assumedDoorHeader = doorHeader(150, 100);
