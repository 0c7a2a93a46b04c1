import type { Scheme } from "@cornerway/schema";
import type { ActionCase } from "../loads/action-case.ts";
import { downOf } from "../loads/free-loads.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";
import type { ElementResult } from "./element-result.ts";
import { mostPressurePa, oneLoadSum } from "./one-load-sum.ts";
import { statedResult } from "./stated-result.ts";
import type { StrengthBasis } from "./strength-basis.ts";

/** Boards of every floor under finishes and the imposed load that asks most, with the heaviest single load that is put on it. */
export function floorResults(scheme: Scheme, imposed: readonly ActionCase[], basis: StrengthBasis): ElementResult[] {
  return scheme.containers.flatMap(({ id }): ElementResult[] => {
    const finishPa = scheme.loads
      .filter(({ containerId, surface, case: kind }) => containerId === id && surface === "floor" && kind === "finish")
      .reduce((sum, { pressurePa }) => sum + pressurePa, 0);
    const sums = imposed.map((action) =>
      oneLoadSum(finishPa, "finishes", mostPressurePa(action, id, "floor"), action, basis.loads),
    );
    const most = sums.toSorted((a, b) => b.pressurePa - a.pressurePa)[0];
    if (most === undefined || most.pressurePa === 0) return [];
    const pointN = most.loadFactor * heaviestPoint(scheme, id);
    const spanMm = usualAssumptions.crossMemberSpacingMm;
    const check = basis.factored.floorBoards({ pressurePa: most.pressurePa, pointN, meaning: most.meaning, spanMm });
    return [statedResult({ ownerId: id, place: "between cross members", run: most.run }, check)];
  });
}

const heaviestPoint = ({ freeLoads }: Scheme, unitId: string): number =>
  freeLoads.reduce(
    (most, load) =>
      load.containerId === unitId && load.surface === "floor" && load.shape === "point"
        ? Math.max(most, downOf(load))
        : most,
    0,
  );
