import type { BuildingFrame } from "../../src/loads/building-frame.ts";
import { windDirections, type Envelope } from "../../src/loads/wind-shape.ts";

/** The envelope of a building without a single opening: enclosed. */
export const windowlessEnvelope = ({ outline }: BuildingFrame): Envelope => ({
  sides: windDirections.map((side) => ({
    side,
    grossM2:
      ((side.endsWith("x") ? outline.y1 - outline.y0 : outline.x1 - outline.x0) * (outline.z1 - outline.z0)) / 1e6,
    openM2: 0,
    doorsM2: 0,
  })),
  roof: { grossM2: ((outline.x1 - outline.x0) * (outline.y1 - outline.y0)) / 1e6, openM2: 0 },
});
