import type { Resistance } from "../working/resistance.ts";
import type { LimitState, statesOfMembers } from "./limit-state.ts";
import type { MemberDemand } from "./member-demand.ts";
import type { MemberStrengths } from "./checked-member.ts";

/** Available strengths as plain numbers, N and N·mm; undefined where refused. Made once, read for every combination. */
export type Capacities = {
  readonly family: MemberStrengths["family"];
  readonly compression: number | undefined;
  readonly tension: number | undefined;
  readonly headPressed: number | undefined;
  readonly footPressed: number | undefined;
  readonly weak: number | undefined;
  readonly shear: number | undefined;
  readonly shearWeak: number | undefined;
  readonly torsion: number | undefined;
};

export function capacitiesOf(strengths: MemberStrengths): Capacities {
  const number = (strength: Resistance): number | undefined => (strength.ok ? strength.available : undefined);
  return {
    family: strengths.family,
    compression: number(strengths.compression),
    tension: number(strengths.tension),
    headPressed: number(strengths.headPressed),
    footPressed: number(strengths.footPressed),
    weak: number(strengths.weak),
    shear: number(strengths.shear),
    shearWeak: number(strengths.shearWeak),
    torsion: number(strengths.torsion),
  };
}

/** The utilisation of `memberUtilisation` by itself: screening asks for nothing else, a million times. */
export function memberUse(capacities: Capacities, demand: MemberDemand): number {
  const axial = demand.axialN >= 0 ? capacities.compression : capacities.tension;
  const strong = demand.momentStrongNmm >= 0 ? capacities.headPressed : capacities.footPressed;
  if ((axial === undefined || strong === undefined || capacities.weak === undefined) && sharing(demand) > 1)
    return Infinity;
  const p = share(demand.axialN, axial);
  const mx = share(demand.momentStrongNmm, strong);
  const my = share(demand.momentWeakNmm, capacities.weak);
  const vx = share(demand.shearStrongN, capacities.shear);
  const vy = share(demand.shearWeakN, capacities.shearWeak);
  const t = share(demand.torsionNmm, capacities.torsion);
  const thin = capacities.family === "cold-formed";
  const all = t > 0.2 ? p + mx + my + (vx + vy + t) * (vx + vy + t) : 0;
  const bent = thin ? p + mx + my : heavyOrLight(p, mx + my);
  return Math.max(p, mx, my, vx, vy, t, all, bent, thin ? Math.sqrt(mx * mx + vx * vx) : 0);
}

/** The limit state that decides and its utilisation; infinite where a strength that acts is refused. */
export type Deciding = { readonly limitState: LimitState; readonly utilisation: number };

/**
 * The same answer as the greatest of `memberChecks`, without workings: for running through combinations, so that workings
 * are made only where something decides.
 */
export function memberUtilisation(capacities: Capacities, demand: MemberDemand): Deciding {
  return isUnstated(capacities, demand)
    ? { limitState: "axial force with bending", utilisation: Infinity }
    : greatest(memberStates(capacities, demand));
}

/**
 * The greatest among these limit states whose strengths are stated: what is refused says nothing, nor does what it enters.
 * 0 where there is none.
 */
export function utilisationAmong(
  among: ReadonlySet<LimitState>,
  capacities: Capacities,
  demand: MemberDemand,
): Deciding {
  const unstated = isUnstated(capacities, demand);
  return greatest(
    memberStates(capacities, demand).filter(
      ([limitState, use]) => among.has(limitState) && Number.isFinite(use) && !(unstated && together.has(limitState)),
    ),
  );
}

/** Those in which forces act together. */
const together: ReadonlySet<LimitState> = new Set<LimitState>([
  "torsion with other forces",
  "axial force with bending",
  "bending with shear",
]);

/** A strength that bending and axial force enter is refused, and two forces share the member. */
function isUnstated(capacities: Capacities, demand: MemberDemand): boolean {
  const axial = demand.axialN >= 0 ? capacities.compression : capacities.tension;
  const strong = demand.momentStrongNmm >= 0 ? capacities.headPressed : capacities.footPressed;
  const stated = axial !== undefined && strong !== undefined && capacities.weak !== undefined;
  return !stated && sharing(demand) > 1;
}

function memberStates(
  capacities: Capacities,
  demand: MemberDemand,
): readonly (readonly [(typeof statesOfMembers)[number], number])[] {
  const compressed = demand.axialN >= 0;
  const axial = compressed ? capacities.compression : capacities.tension;
  const strong = demand.momentStrongNmm >= 0 ? capacities.headPressed : capacities.footPressed;
  const p = share(demand.axialN, axial);
  const mx = share(demand.momentStrongNmm, strong);
  const my = share(demand.momentWeakNmm, capacities.weak);
  const vx = share(demand.shearStrongN, capacities.shear);
  const vy = share(demand.shearWeakN, capacities.shearWeak);
  const t = share(demand.torsionNmm, capacities.torsion);
  const thin = capacities.family === "cold-formed";
  return [
    [compressed ? "compression" : "tension", p],
    ["bending, strong axis", mx],
    ["bending, weak axis", my],
    ["shear", vx],
    ["shear", vy],
    ["torsion", t],
    ["torsion with other forces", t > 0.2 ? p + mx + my + (vx + vy + t) * (vx + vy + t) : 0],
    ["axial force with bending", thin ? p + mx + my : heavyOrLight(p, mx + my)],
    ["bending with shear", thin ? Math.sqrt(mx * mx + vx * vx) : 0],
  ];
}

/** How many forces share the member: a strength that is refused matters once there are two. */
const sharing = (demand: MemberDemand): number =>
  Number(demand.axialN !== 0) +
  Number(demand.shearStrongN !== 0) +
  Number(demand.shearWeakN !== 0) +
  Number(demand.momentStrongNmm !== 0) +
  Number(demand.momentWeakNmm !== 0) +
  Number(demand.torsionNmm !== 0);

const share = (demand: number, capacity: number | undefined): number =>
  demand === 0 ? 0 : capacity === undefined ? Infinity : Math.abs(demand) / capacity;

/** AISC 360 H1-1a and H1-1b. */
const heavyOrLight = (p: number, m: number): number => (p >= 0.2 ? p + (8 / 9) * m : p / 2 + m);

function greatest(states: readonly (readonly [LimitState, number])[]): Deciding {
  let deciding: Deciding = { limitState: "compression", utilisation: 0 };
  for (const [limitState, utilisation] of states)
    if (utilisation > deciding.utilisation) deciding = { limitState, utilisation };
  return deciding;
}
