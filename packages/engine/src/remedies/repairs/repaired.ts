import type { Trial } from "../trial.ts";
import { heavierPostsToo } from "./heavier-posts-too.ts";
import { heldDownToo } from "./held-down-too.ts";
import { largerPadsToo } from "./larger-pads-too.ts";
import { narrowerOpeningsToo } from "./narrower-openings-too.ts";
import { postsBeneathToo } from "./posts-beneath-too.ts";
import type { Lacking } from "./repair.ts";

/** The trial with what it lacks; undefined where nothing is known that would do. */
export function repaired(trial: Trial, lacking: Lacking): Trial | undefined {
  const heavier = heavierPostsToo(trial, lacking);
  const beneath = postsBeneathToo(heavier ?? trial, lacking);
  // posts take their load off rails, sheets and pads: what is left to do is seen at the next look
  if (beneath !== undefined) return beneath;
  const larger = largerPadsToo(heavier ?? trial, lacking) ?? heavier;
  const narrower = narrowerOpeningsToo(larger ?? trial, lacking) ?? larger;
  return heldDownToo(narrower ?? trial, lacking) ?? narrower;
}
