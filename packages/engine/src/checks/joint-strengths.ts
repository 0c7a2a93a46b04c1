import { spreadingPlateBending } from "../codes/steel/base-plate.ts";
import { steelBearing } from "../codes/steel/bearing.ts";
import { boltBearing, boltStrength } from "../codes/steel/bolt.ts";
import { pullWithoutPrying } from "../codes/steel/bolt-prying.ts";
import { boltTensionBesideShear } from "../codes/steel/bolt-together.ts";
import { blockShear, plateCompression, plateShearRupture, plateShearYielding } from "../codes/steel/connecting-part.ts";
import { flatPlateFlexure } from "../codes/steel/flat-plate.ts";
import { momentGradient } from "../codes/steel/moment-gradient.ts";
import type { SteelBasis } from "../codes/steel/steel-basis.ts";
import { tensionRupture, tensionYielding } from "../codes/steel/tension.ts";
import { branchOnTube, platePlastification, sideWallCrippling, sideWallYielding } from "../codes/steel/tube-wall.ts";

/** Takes the last argument of a strength, the basis, as given. */
type Bound<T> = T extends (...args: [...infer A, SteelBasis]) => infer R ? (...args: A) => R : never;

/** Strengths that made connections are put together from, N; each states its own shapes and refusals. */
export type JointStrengths = {
  readonly bolt: Bound<typeof boltStrength>;
  readonly boltTensionBesideShear: Bound<typeof boltTensionBesideShear>;
  readonly pullWithoutPrying: Bound<typeof pullWithoutPrying>;
  readonly boltBearing: Bound<typeof boltBearing>;
  readonly tensionYielding: Bound<typeof tensionYielding>;
  readonly tensionRupture: Bound<typeof tensionRupture>;
  readonly plateShearYielding: Bound<typeof plateShearYielding>;
  readonly plateShearRupture: Bound<typeof plateShearRupture>;
  readonly blockShear: Bound<typeof blockShear>;
  readonly flatPlateFlexure: Bound<typeof flatPlateFlexure>;
  readonly plateCompression: Bound<typeof plateCompression>;
  readonly steelBearing: Bound<typeof steelBearing>;
  readonly spreadingPlateBending: Bound<typeof spreadingPlateBending>;
  readonly branchOnTube: Bound<typeof branchOnTube>;
  readonly platePlastification: Bound<typeof platePlastification>;
  readonly sideWallYielding: Bound<typeof sideWallYielding>;
  readonly sideWallCrippling: Bound<typeof sideWallCrippling>;
  readonly momentGradient: Bound<typeof momentGradient>;
};

export const jointStrengths = (basis: SteelBasis): JointStrengths => ({
  bolt: (bolt, force) => boltStrength(bolt, force, basis),
  boltTensionBesideShear: (bolt, shearN) => boltTensionBesideShear(bolt, shearN, basis),
  pullWithoutPrying: (plate) => pullWithoutPrying(plate, basis),
  boltBearing: (bearing) => boltBearing(bearing, basis),
  tensionYielding: (part) => tensionYielding(part, basis),
  tensionRupture: (part) => tensionRupture(part, basis),
  plateShearYielding: (steel, grossMm2) => plateShearYielding(steel, grossMm2, basis),
  plateShearRupture: (steel, netMm2) => plateShearRupture(steel, netMm2, basis),
  blockShear: (steel, block) => blockShear(steel, block, basis),
  flatPlateFlexure: (plate) => flatPlateFlexure(plate, basis),
  plateCompression: (plate) => plateCompression(plate, basis),
  steelBearing: (steel, areaMm2) => steelBearing(steel, areaMm2, basis),
  spreadingPlateBending: (plate) => spreadingPlateBending(plate, basis),
  branchOnTube: (chord, branch) => branchOnTube(chord, branch, basis),
  platePlastification: (chord, plate) => platePlastification(chord, plate, basis),
  sideWallYielding: (chord, force) => sideWallYielding(chord, force, basis),
  sideWallCrippling: (chord, force) => sideWallCrippling(chord, force, basis),
  momentGradient: (moments) => momentGradient(moments, basis),
});
