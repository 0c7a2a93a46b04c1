import type { MarkKind } from "@cornerway/schema";

/** What marks of one kind are about, where the name of the kind does not say it. */
const matterWords: Readonly<Partial<Record<MarkKind, string>>> = {
  "borne-on-fittings": "Corner on corner",
  "below-not-settled": "What is below is not settled",
  overhang: "Overhangs",
  "borne-on-rail": "Bearing on rails",
  "made-connection": "Made connections",
  "corner-on-air": "Corners on air",
  "tips-over": "Tipping over",
  "near-tipping": "Near tipping",
  rocks: "Rocking",
  "stands-clear": "Standing clear",
  "off-its-pad": "Past the edge of pads",
  mechanism: "Free to move",
  collision: "In one place",
  "member-cut": "Members cut",
  "load-over-opening": "Load over openings",
  "opening-in-sheet": "Openings in the sheets",
  "wall-out": "Walls taken out",
  "openings-overlap": "Openings over each other",
  "opening-off-face": "Openings off their face",
  "hatch-blocked": "Openings that lead nowhere",
  "cross-members-cut": "Cross members cut",
  "post-without-ground": "Posts without ground",
  "post-holds-nothing": "Posts that hold nothing",
  "post-carries": "What posts carry",
  "post-off-centre": "Posts off centre",
  "post-through-opening": "Posts in openings",
  "post-through-unit": "Posts through containers",
  "below-ground": "Below ground",
  "pad-missing": "Pads missing",
  "pad-holds-nothing": "Pads that hold nothing",
  "pad-off-ground": "Pads off the ground",
};

/** What several marks of one kind are about, as a heading over them. */
export const matterOf = (kind: string): string => byKind.get(kind) ?? spoken(kind);

const byKind: ReadonlyMap<string, string> = new Map(Object.entries(matterWords));

const spoken = (kind: string): string => kind.charAt(0).toUpperCase() + kind.slice(1).replaceAll("-", " ");
