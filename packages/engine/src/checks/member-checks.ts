import { thinAxialWithBending, thinBendingWithShear } from "../codes/cold-formed/combined-forces.ts";
import { axialWithBending } from "../codes/steel/interaction.ts";
import { aisc } from "../codes/steel/steel-basis.ts";
import { torsionWithOthers } from "../codes/steel/torsion-interaction.ts";
import type { Refusal, Resistance } from "../working/resistance.ts";
import type { Working } from "../working/working.ts";
import { checkOf, demandAgainst, type Check } from "./check.ts";
import type { LimitState } from "./limit-state.ts";
import type { MemberDemand } from "./member-demand.ts";
import type { MemberStrengths } from "./checked-member.ts";

/**
 * Every limit state of a member under one set of forces, with workings: each force alone, then together (AISC 360 H or
 * AISI S100 H). A force that does not act makes no check; a strength that is refused refuses every check it enters.
 */
export function memberChecks(strengths: MemberStrengths, demand: MemberDemand): readonly Check[] {
  const { element } = strengths;
  const alone = (limitState: LimitState, value: number, strength: Resistance): Check[] =>
    value === 0 ? [] : [demandAgainst({ element, limitState }, value, strength)];
  const acting = actingStrengths(strengths, demand);
  return [
    ...alone(demand.axialN >= 0 ? "compression" : "tension", demand.axialN, acting.axial),
    ...alone("bending, strong axis", demand.momentStrongNmm, acting.strong),
    ...alone("bending, weak axis", demand.momentWeakNmm, strengths.weak),
    ...alone("shear", demand.shearStrongN, strengths.shear),
    ...alone("shear", demand.shearWeakN, strengths.shearWeak),
    ...alone("torsion", demand.torsionNmm, strengths.torsion),
    ...together(strengths, acting, demand),
  ];
}

type Acting = { readonly axial: Resistance; readonly strong: Resistance };

const actingStrengths = (strengths: MemberStrengths, demand: MemberDemand): Acting => ({
  axial: demand.axialN >= 0 ? strengths.compression : strengths.tension,
  strong: demand.momentStrongNmm >= 0 ? strengths.headPressed : strengths.footPressed,
});

function together(strengths: MemberStrengths, { axial, strong }: Acting, demand: MemberDemand): Check[] {
  const { element, weak, shear } = strengths;
  const refuse = (limitState: LimitState, why: Refusal): Check[] => [{ ok: false, element, limitState, why }];
  const sharing = Object.values(demand).filter((force) => force !== 0).length;
  // A refused strength matters once two forces share the member; one alone has its own check.
  if (!axial.ok) return sharing < 2 ? [] : refuse("axial force with bending", axial.why);
  if (!strong.ok) return sharing < 2 ? [] : refuse("axial force with bending", strong.why);
  if (!weak.ok) return sharing < 2 ? [] : refuse("axial force with bending", weak.why);
  const whole = { axial: axial.working, strong: strong.working, weak: weak.working };
  const combined = checkOf(
    { element, limitState: "axial force with bending" },
    axialAndBending(strengths, whole, demand),
  );
  if (!shear.ok) return [combined];
  const workings = { ...whole, shear: shear.working };
  return [combined, ...bendingAndShear(strengths, workings, demand), ...torsionAndAll(strengths, workings, demand)];
}

type Workings = { readonly axial: Working; readonly strong: Working; readonly weak: Working; readonly shear: Working };

function axialAndBending(
  { family, basis }: MemberStrengths,
  { axial, strong, weak }: Omit<Workings, "shear">,
  demand: MemberDemand,
): Working {
  const required = { axialN: demand.axialN, mxNmm: demand.momentStrongNmm, myNmm: demand.momentWeakNmm };
  const available = { axial, mx: strong, my: weak };
  return family === "cold-formed"
    ? thinAxialWithBending(required, available, basis.thin)
    : axialWithBending(required, available, basis.steel);
}

/** Only cold-formed webs lose to bending and shear together. */
function bendingAndShear(
  { family, element, basis }: MemberStrengths,
  workings: Workings,
  demand: MemberDemand,
): Check[] {
  if (family !== "cold-formed") return [];
  const required = { momentNmm: demand.momentStrongNmm, shearN: demand.shearStrongN };
  const available = { moment: workings.strong, shear: workings.shear };
  return [
    checkOf({ element, limitState: "bending with shear" }, thinBendingWithShear(required, available, basis.thin)),
  ];
}

/** H3.2 leaves torsion out up to a fifth of its strength. */
function torsionAndAll(strengths: MemberStrengths, workings: Workings, demand: MemberDemand): Check[] {
  const { element, torsion, shearWeak, basis } = strengths;
  const subject = { element, limitState: "torsion with other forces" } as const;
  if (!torsion.ok || Math.abs(demand.torsionNmm) <= 0.2 * torsion.available) return [];
  if (!shearWeak.ok) return [{ ok: false, ...subject, why: shearWeak.why }];
  const working = torsionWithOthers(aisc(basis.steel, "H3.2"), {
    axial: { demand: demand.axialN, strength: workings.axial },
    strong: { demand: demand.momentStrongNmm, strength: workings.strong },
    weak: { demand: demand.momentWeakNmm, strength: workings.weak },
    shear: { demand: demand.shearStrongN, strength: workings.shear },
    shearWeak: { demand: demand.shearWeakN, strength: shearWeak.working },
    torsion: { demand: demand.torsionNmm, strength: torsion.working },
  });
  return [checkOf(subject, working)];
}
