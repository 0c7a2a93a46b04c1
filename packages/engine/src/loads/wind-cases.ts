import type { ActionCase, ActionLoad } from "./action-case.ts";
import type { BoxFactors } from "./box-factors.ts";
import type { BuildingFrame } from "./building-frame.ts";
import { exposedFaces, type ExposedFace } from "./exposed-faces.ts";
import { even } from "./face-patch.ts";
import { normalLoad } from "./normal-load.ts";
import { roofWind } from "./roof-wind.ts";
import { wallWind } from "./wall-wind.ts";
import { windwardSideOf } from "./windward-side.ts";
import type { MainSystemWind, WindLoadCase } from "./wind-pressures.ts";
import { windDirections, type WindDirection } from "./wind-shape.ts";

/**
 * Wind on the main system as actions: every load case of the code, once with pressure inside and the strongest suction
 * on the roof, once with suction inside and the weakest one; and the least load on each windward side by itself.
 * Pressures act on what is exposed. `on`: the units whose loads are told; absent: all.
 */
export function windCases(
  building: BuildingFrame,
  wind: MainSystemWind,
  loadCases: readonly WindLoadCase[],
  factors: BoxFactors,
  on?: readonly string[],
): ActionCase[] {
  const exposed = exposedFaces(building).filter(({ unit }) => on?.includes(unit.id) !== false);
  const full = loadCases.flatMap((loadCase) =>
    ([1, -1] as const).map((inside): ActionCase => ({
      id: `${loadCase.id} inside ${inside > 0 ? "pressure" : "suction"}`,
      symbol: "W",
      loads: exposed.flatMap((part) => windOn(building, wind, loadCase, factors, inside, part)),
    })),
  );
  return [...full, ...windDirections.map((direction) => leastCase(building, wind, exposed, factors, direction))];
}

function windOn(
  building: BuildingFrame,
  wind: MainSystemWind,
  loadCase: WindLoadCase,
  factors: BoxFactors,
  inside: 1 | -1,
  part: ExposedFace,
): ActionLoad[] {
  const outward = inside * wind.internalPa;
  if (part.side === "up" || part.side === "down") return roofWind(building, wind, loadCase, outward, inside > 0, part);
  return wallWind(building, wind, loadCase, factors, outward, part, part.side);
}

function leastCase(
  building: BuildingFrame,
  wind: MainSystemWind,
  exposed: readonly ExposedFace[],
  factors: BoxFactors,
  direction: WindDirection,
): ActionCase {
  return {
    id: `W least ${direction}`,
    symbol: "W",
    loads: exposed
      .filter(({ side }) => side === windwardSideOf[direction])
      .map((part) => normalLoad(building.axes, part, part.rect, even(wind.leastPa * factors[direction]))),
  };
}
