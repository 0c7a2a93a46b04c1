import type { SchemeModel } from "@cornerway/engine";
import type { Derived } from "../derived.ts";
import { layChanges } from "./changes.ts";
import { indexPages } from "./index-page.ts";
import type { Figure } from "../figure.ts";
import { CalculationFlow } from "../paper/calculation-flow.ts";
import type { Page } from "../paper/page.ts";
import type { SetSource } from "../set-source.ts";
import type { Solved } from "../solved.ts";
import { layAssumptions, layCoverage, layFromMemory } from "./honesty.ts";
import { layCriteria } from "./criteria.ts";
import { layErection } from "./erection.ts";
import { layHandChecks } from "./hand-checks.ts";
import { layLoads } from "./loads.ts";
import { layMarks } from "./marks.ts";
import { layModel } from "./model.ts";
import { layReactions } from "./reactions.ts";
import { layMemberForces } from "./solved-forces.ts";
import { layResponse } from "./response.ts";
import { laySite } from "./site.ts";
import { laySoftware } from "./software.ts";
import { layStrength } from "./strength.ts";
import { laySurvey } from "./survey.ts";
import { layWayDown } from "./way-down.ts";

/**
 * The calculations in the order they are read: an index, basis, loads, the way down, what is found, how far to trust it.
 * `firstPage` is the place of the first of them in the set.
 */
export function calculationPages(
  source: SetSource,
  derived: Derived,
  model: SchemeModel,
  solved: Solved | null,
  firstPage: number,
): { pages: Page[]; figures: Figure[] } {
  const flow = new CalculationFlow(source, "Calculations");
  layCriteria(flow, source, derived);
  layLoads(flow, source, derived);
  layWayDown(flow, source, derived);
  const reactions = layReactions(flow, source, derived, solved);
  const byHand = layHandChecks(flow, source, derived, solved);
  layMarks(flow, source, derived);
  layModel(flow, source, derived, model);
  layStrength(flow, source, derived);
  layMemberForces(flow, source, derived, solved);
  layErection(flow, source, derived);
  laySite(flow, source, derived);
  laySurvey(flow, source);
  layAssumptions(flow, source);
  layCoverage(flow, source);
  layFromMemory(flow, source);
  laySoftware(flow, source);
  layChanges(flow, source);
  layResponse(flow, source);
  const pages = [...indexPages(source, flow.pages, firstPage), ...flow.pages];
  return { pages, figures: [...reactions, ...byHand] };
}
