import type { AnchorGroup } from "../codes/concrete/anchor-group.ts";
import { aci } from "../codes/concrete/anchor-group.ts";
import { anchorPryout, anchorShearBreakout, anchorSteelShear } from "../codes/concrete/anchor-shear.ts";
import { anchorBreakout, anchorPullout, anchorSteelTension } from "../codes/concrete/anchor-tension.ts";
import { openWorking } from "../working/open-working.ts";
import type { Working } from "../working/working.ts";
import { checkOf, demandAgainst, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";

/** Anchors under a plate with strength-level forces, N: pull > 0 through the group's middle, shear towards the right edge. */
export type AnchoredPlate = {
  readonly element: Extract<CheckedElement, "pad" | "added post">;
  readonly group: AnchorGroup;
  readonly pullN: number;
  readonly shearN: number;
  readonly grouted: boolean;
};

/** Every limit state of the anchors, and tension with shear (17.8: the sum of the worst ratios against 1.2). */
export function anchors(plate: AnchoredPlate): readonly Check[] {
  const { element, group, pullN, shearN } = plate;
  const subject = { element, limitState: "anchor" } as const;
  const pulled =
    pullN <= 0
      ? []
      : [anchorSteelTension(group), anchorBreakout(group), anchorPullout(group)].map((strength) =>
          demandAgainst(subject, pullN, strength),
        );
  const sheared =
    shearN === 0
      ? []
      : [anchorSteelShear(group, plate.grouted), anchorShearBreakout(group), anchorPryout(group)].map((strength) =>
          demandAgainst(subject, shearN, strength),
        );
  return [...pulled, ...sheared, ...pulledAndSheared(element, pulled, sheared)];
}

function pulledAndSheared(
  element: AnchoredPlate["element"],
  pulled: readonly Check[],
  sheared: readonly Check[],
): Check[] {
  const [pull, push] = [worst(pulled), worst(sheared)];
  if (pull === undefined || push === undefined) return [];
  const working = openWorking("Anchors, tension with shear", aci("17.8.3"));
  working.let("u_N", pull.utilisation ?? 0, "1", pull.title, pull.certainty);
  working.let("u_V", push.utilisation ?? 0, "1", push.title, push.certainty);
  working.compute("ratio", "u_N + u_V", "1", "Eq. 17.8.3");
  working.let("limit", 1.2, "1", "limit", "memory");
  return [checkOf({ element, limitState: "anchor" }, working.against("ratio", "limit"))];
}

/** The working of the greatest utilisation; a refused one stands as a check of its own beside. */
const worst = (checks: readonly Check[]): Working | undefined =>
  checks.reduce<Working | undefined>(
    (found, check) => (check.ok && check.utilisation > (found?.utilisation ?? -1) ? check.working : found),
    undefined,
  );
