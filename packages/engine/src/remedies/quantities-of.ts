import type {
  Operation,
  Premium,
  RemedyChange,
  RemedyQuantities,
  RemedySight,
  RemedySteel,
  Scheme,
} from "@cornerway/schema";
import { kgPerMOf } from "./section-mass.ts";

/** What a change adds, by the take-off of both schemes. `before` and `after` are premiums under one cost book. */
export function quantitiesOf(
  changes: readonly RemedyChange[],
  operations: readonly Operation[],
  scheme: Scheme,
  before: Premium,
  after: Premium,
): RemedyQuantities {
  const [was, is] = [before.quantities, after.quantities];
  const connections = (all: Premium["quantities"]) => all.connections.reduce((sum, { count }) => sum + count, 0);
  const weld = (all: Premium["quantities"]) => all.weldM.reduce((sum, { lengthM }) => sum + lengthM, 0);
  return {
    steel: addedSteel(was.steelKg, is.steelKg),
    cutM: moreThan(is.cutM, was.cutM),
    weldM: moreThan(weld(is), weld(was)),
    pads: is.pads - was.pads,
    padConcreteM3: moreThan(is.padConcreteM3, was.padConcreteM3),
    connections: connections(is) - connections(was),
    craneLifts: is.craneLifts - was.craneLifts,
    sights: [...new Set(changes.flatMap(sightsOf))],
    ...lost(operations, scheme),
  };
}

type SteelKg = Premium["quantities"]["steelKg"];

/** By section, what there is more of; a tonne less of one section is not set off against another. */
function addedSteel(was: SteelKg, is: SteelKg): RemedySteel[] {
  return is.flatMap(({ section, massKg }): RemedySteel[] => {
    const added = massKg - (was.find((one) => one.section === section)?.massKg ?? 0);
    if (added <= 0) return [];
    const perM = kgPerMOf(section);
    return [{ section, lengthM: perM > 0 ? added / perM : null, massKg: added }];
  });
}

const moreThan = (is: number, was: number): number => Math.max(0, is - was);

/** Clear width and height that openings lose, together and at most. */
function lost(operations: readonly Operation[], { openings }: Scheme): { lostWidthMm: number; lostHeightMm: number } {
  let [widthUm, heightUm] = [0, 0];
  for (const operation of operations) {
    if (operation.kind === "opening.shape" || operation.kind === "opening.change") {
      const after = operation.kind === "opening.shape" ? operation : operation.opening;
      const was = openings.find(({ id }) => id === after.id);
      widthUm += (was?.widthUm ?? after.widthUm) - after.widthUm;
      heightUm = Math.max(heightUm, (was?.heightUm ?? after.heightUm) - after.heightUm);
    }
    if (operation.kind === "opening.cut") widthUm -= operation.opening.widthUm;
    if (operation.kind === "opening.close") {
      const was = openings.find(({ id }) => id === operation.id);
      widthUm += was?.widthUm ?? 0;
      heightUm = Math.max(heightUm, was?.heightUm ?? 0);
    }
  }
  return { lostWidthMm: Math.max(0, widthUm / 1000), lostHeightMm: Math.max(0, heightUm / 1000) };
}

function sightsOf(change: RemedyChange): RemedySight[] {
  switch (change.kind) {
    case "frame opening":
      return ["frame round the opening"];
    case "header":
      return change.outOfProportion ? ["deep header"] : ["frame round the opening"];
    case "split opening":
    case "leave a pier":
      return ["pier"];
    case "posts":
      return [
        change.under === "corners" || change.under === "rail" ? "post outside" : "post in the wall",
        ...(change.header === null ? [] : (["frame round the opening"] as const)),
        ...(change.padMm === null ? [] : (["pad in the ground"] as const)),
      ];
    case "larger pads":
      return ["pad in the ground"];
    case "seats":
      return ["seat under the unit"];
    default:
      return [];
  }
}
