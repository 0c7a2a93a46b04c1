import type { Scheme } from "@cornerway/schema";
import { alone } from "./shared-work.ts";
import type { StrengthMemory } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { Strength } from "./strength-from.ts";
import { strengthShared, type TellProgress } from "./strength-shared.ts";

export type { Strength } from "./strength-from.ts";
export { strengthSteps, type TellProgress } from "./strength-shared.ts";

/** What `strengthShared` gives, all done here. Pure. Throws a RangeError for a scheme without containers. */
export const strengthOf = (
  scheme: Scheme,
  basis: StrengthBasis,
  memory: StrengthMemory,
  tell?: TellProgress,
): Strength => alone(strengthShared(scheme, basis, memory, 0, tell));
