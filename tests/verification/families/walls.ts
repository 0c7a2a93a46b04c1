import { wallCases, wallReadings } from "../../../packages/engine/test/model/support/wall-cases.ts";
import type { VerificationCase, VerificationFamily } from "../verification-case.ts";

/** Side walls in the product's own mesh against a corrugated sheet modelled fold by fold. */
export const walls: VerificationFamily = {
  id: "walls",
  title: "Side walls against a sheet modelled fold by fold",
  about:
    "Eleven side walls of a 40 ft container, whole, cut, framed, taken out and overhanging. The reference models every fold of the sheet with shells; ours is the product's own mesh of strips. How far each may be off is stated with the reference and is wider where sheet is cut without a frame: such a cut stands 90 mm wider at each bare edge in our mesh, so that deflections and moments err on the safe side, the moment of the top rail by up to 25 % where the reference asks for 10 %.",
  cases: wallCases.flatMap((wall) =>
    wallReadings(wall).map(({ what, reference, unit, allowed, ours }): VerificationCase => ({
      id: `${wall.name}: ${what}`,
      what: `${wall.name}: ${what}`,
      source: "shared/reference/walls.json, shell model of every fold",
      certainty: "derived",
      ...{ reference, unit, allowed, ours },
    })),
  ),
};
