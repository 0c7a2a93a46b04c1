import type { ChannelSection, ISection, TubeSection } from "../../catalog/sections/section.ts";
import type { OpenWorking } from "../../working/open-working.ts";

/**
 * Records the effective area A_e at the stress F_cr (E7.1): what slender walls lose is taken off. Needs E, F_y, F_cr and
 * A_g in the working.
 */
export function effectiveArea(working: OpenWorking, section: TubeSection | ISection | ChannelSection): void {
  const losses = wallsOf(section)
    .map((wall) => lossOf(working, wall))
    .filter((loss) => loss !== undefined);
  working.compute("A_e", ["A_g", ...losses].join(" - "), "mm²", "E7");
}

/** A flat wall: how many like it, its width and thickness, its limit (Table B4.1a) and its two factors (Table E7.1). */
type Wall = {
  readonly mark: string;
  readonly meaning: string;
  readonly count: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly limit: number;
  readonly c1: number;
  readonly c2: number;
  readonly certainty: TubeSection["certainty"];
};

const tubeWall = { limit: 1.4, c1: 0.2, c2: 1.38 } as const;
const web = { limit: 1.49, c1: 0.18, c2: 1.31 } as const;
const flange = { limit: 0.56, c1: 0.22, c2: 1.49 } as const;

function wallsOf(section: TubeSection | ISection | ChannelSection): Wall[] {
  const { certainty } = section;
  if (section.kind === "tube")
    return [
      {
        ...tubeWall,
        certainty,
        mark: "1",
        meaning: "wall along the depth",
        count: 2,
        widthMm: section.flatDepthMm,
        thicknessMm: section.wallMm,
      },
      {
        ...tubeWall,
        certainty,
        mark: "2",
        meaning: "wall along the width",
        count: 2,
        widthMm: section.flatWidthMm,
        thicknessMm: section.wallMm,
      },
    ];
  const outstand = section.kind === "I" ? section.flangeWidthMm / 2 : section.flangeWidthMm;
  return [
    {
      ...web,
      certainty,
      mark: "w",
      meaning: "web",
      count: 1,
      widthMm: webHeightMm(section),
      thicknessMm: section.webMm,
    },
    {
      ...flange,
      certainty,
      mark: "f",
      meaning: "flange",
      count: section.kind === "I" ? 4 : 2,
      widthMm: outstand,
      thicknessMm: section.flangeMm,
    },
  ];
}

/** Clear height of a web: to the fillets where their size is known, else to the flanges, which is on the safe side. */
export const webHeightMm = (section: ISection | ChannelSection): number =>
  section.depthMm - 2 * (section.kind === "I" ? (section.kMm ?? section.flangeMm) : section.flangeMm);

/** Records whether the wall is slender at F_cr; gives the symbol of the area lost, if any. */
function lossOf(working: OpenWorking, wall: Wall): string | undefined {
  const { mark } = wall;
  const width = `b_${mark}`;
  const thickness = `t_${mark}`;
  working.let(width, wall.widthMm, "mm", `flat width, ${wall.meaning}`, wall.certainty);
  working.let(thickness, wall.thicknessMm, "mm", `thickness, ${wall.meaning}`, wall.certainty);
  working.compute(`λ_r${mark}`, `${wall.limit}*sqrt(E/F_y)`, "1", "Table B4.1a");
  if (working.when(`${width}/${thickness}`, "<=", `λ_r${mark}*sqrt(F_y/F_cr)`, "E7.1(a)")) return undefined;
  working.compute(`F_el${mark}`, `(${wall.c2}*λ_r${mark}/(${width}/${thickness}))^2*F_y`, "MPa", "Eq. E7-5");
  working.compute(
    `b_e${mark}`,
    `${width}*(1 - ${wall.c1}*sqrt(F_el${mark}/F_cr))*sqrt(F_el${mark}/F_cr)`,
    "mm",
    "Eq. E7-3",
  );
  working.compute(`A_l${mark}`, `${wall.count}*(${width} - b_e${mark})*${thickness}`, "mm²");
  return `A_l${mark}`;
}
