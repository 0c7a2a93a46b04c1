import type { CheckedMember, MemberStrengths } from "./checked-member.ts";
import type { CodeBasis } from "./code-basis.ts";
import { pressedStrengths } from "./pressed-strengths.ts";
import { structuralStrengths } from "./structural-strengths.ts";
import { thinTubeStrengths } from "./thin-tube-strengths.ts";

/** Strengths by the code the section belongs to: pressed sections and container rails cold-formed, the rest structural. */
export function memberStrengths(member: CheckedMember, basis: CodeBasis): MemberStrengths {
  const { section } = member;
  if (section.kind === "pressed") return pressedStrengths({ ...member, section }, basis);
  if (section.kind === "tube" && section.made === "container rail")
    return thinTubeStrengths({ ...member, section }, basis);
  return structuralStrengths(member, basis);
}
