import type { Analysis } from "../load-path/analysis.ts";
import type { BuiltModel } from "../model/build-model.ts";
import type { ModelAssumptions } from "../model/model-assumptions.ts";
import { unitLinesOf } from "../model/unit-lines-of.ts";
import { hypot } from "../numerics/elementary.ts";
import { demandRoom, DemandsAlong } from "../strength/demands-along.ts";
import { linePlaces } from "../strength/line-places.ts";
import { memberStretches } from "../strength/member-stretches.ts";
import type { LineForces, SolvedRun } from "../strength/solve-runs.ts";
import { unitBeams, type UnitBeam } from "../strength/unit-beams.ts";
import { rounded, toKn } from "../units.ts";

/** A force at its greatest or least, kN or kN·m, where in its unit, mm, and in which run. */
export type Extreme = { readonly value: number; readonly at: MemberPlace; readonly run: string };

/** Along the unit from its front posts, across from its middle to the left, up from its underside, mm. */
export type MemberPlace = { readonly uMm: number; readonly yMm: number; readonly zMm: number };

/** Forces in one member, under the names its checks go by. Shear and moment are of both axes together. */
export type MemberForces = {
  readonly ownerId: string;
  readonly part: string;
  readonly place: string;
  /** Compression positive: the greatest, and the least, which is a pull where it is negative. */
  readonly pressed: Extreme;
  readonly pulled: Extreme;
  readonly shear: Extreme;
  readonly moment: Extreme;
};

type Member = {
  readonly ownerId: string;
  readonly part: string;
  readonly place: string;
  readonly beams: readonly Beam[];
  readonly forces: (solved: SolvedRun) => LineForces;
};

type Beam = Pick<UnitBeam, "id" | "lengthMm" | "uMm" | "yMm" | "zMm">;

/** Greatest and least forces of every member over these runs; empty where no run stands. */
export function memberForces(
  analysis: Analysis,
  built: BuiltModel,
  assumptions: ModelAssumptions,
  runs: readonly SolvedRun[],
): MemberForces[] {
  const extremes = membersOf(analysis, built, assumptions).map((member) => new Extremes(member));
  for (const solved of runs) for (const one of extremes) one.take(solved);
  return extremes.flatMap((one) => one.told() ?? []);
}

function membersOf(analysis: Analysis, built: BuiltModel, assumptions: ModelAssumptions): Member[] {
  const { structure } = analysis;
  const inContainers = built.model.units.flatMap(({ id, fragment }): Member[] => {
    const unit = structure.building.unitById.get(id);
    if (unit === undefined) return [];
    const lines = unitLinesOf(structure, built.plan, unit, assumptions);
    const beams = unitBeams(fragment, lines);
    const forces = (solved: SolvedRun): LineForces => solved.inner(id);
    return [
      ...cornerPosts(beams, lines.lengthMm).map((post) => ({ ownerId: id, ...post, forces })),
      ...memberStretches(id, beams, lines, () => "").map(({ place, member, beams: own }) => ({
        ...{ ownerId: id, part: member.element, place, forces },
        // a stretch is given back with the lines it was made of
        beams: own.flatMap((line) => beams.find((beam) => beam.id === line.id) ?? []),
      })),
    ];
  });
  return [...inContainers, ...freePosts(analysis, built)];
}

const cornerPosts = (beams: readonly UnitBeam[], lengthMm: number): Omit<Member, "ownerId" | "forces">[] =>
  (["front", "door"] as const).flatMap((end) =>
    (["left", "right"] as const).map((side) => ({
      part: `${end} corner post`,
      place: side,
      beams: beams.filter(
        (beam) => beam.kind === "post" && beam.side === side && beam.uMm < lengthMm / 2 === (end === "front"),
      ),
    })),
  );

const freePosts = ({ structure }: Analysis, { plan, model }: BuiltModel): Member[] =>
  plan.freePosts.flatMap((id): Member[] => {
    const post = structure.building.postById.get(id);
    const name = `${id}:post`;
    if (post === undefined || !model.between.beams.some((beam) => beam.id === name)) return [];
    const lengthMm = post.headZMm - post.footZMm;
    return [
      {
        ...{ ownerId: id, part: "added post", place: "by itself" },
        beams: [{ id: name, lengthMm, uMm: 0, yMm: 0, zMm: lengthMm / 2 }],
        forces: (solved) => solved.between(),
      },
    ];
  });

type Best = { value: number; beam: Beam | undefined; run: string };

class Extremes {
  private readonly member: Member;
  private readonly linesIn: ReturnType<typeof linePlaces>;
  private readonly along = new DemandsAlong();
  private readonly room = demandRoom();
  private readonly best = { pressed: none(), pulled: none(), shear: none(), moment: none() };

  constructor(member: Member) {
    this.member = member;
    this.linesIn = linePlaces(member.beams);
  }

  take(solved: SolvedRun): void {
    const { beams, forces } = this.member;
    const { values, at } = forces(solved);
    const lines = this.linesIn(at);
    const { along, room, best } = this;
    beams.forEach((beam, b) => {
      along.take(values, lines[b] ?? 0, beam.lengthMm);
      for (let n = 0; n < along.count; n++) {
        along.write(n, room);
        keep(best.pressed, room.axialN, beam, solved);
        keep(best.pulled, -room.axialN, beam, solved);
        keep(best.shear, hypot(room.shearStrongN, room.shearWeakN), beam, solved);
        keep(best.moment, hypot(room.momentStrongNmm, room.momentWeakNmm), beam, solved);
      }
    });
  }

  told(): MemberForces | undefined {
    const { ownerId, part, place } = this.member;
    const { pressed, pulled, shear, moment } = this.best;
    if (pressed.beam === undefined) return undefined;
    return {
      ...{ ownerId, part, place },
      pressed: toExtreme(pressed, toKn(pressed.value)),
      pulled: toExtreme(pulled, -toKn(pulled.value)),
      shear: toExtreme(shear, toKn(shear.value)),
      moment: toExtreme(moment, moment.value / NMM_PER_KNM),
    };
  }
}

const none = (): Best => ({ value: -Infinity, beam: undefined, run: "" });

function keep(best: Best, value: number, beam: Beam, { run }: SolvedRun): void {
  if (value <= best.value) return;
  best.value = value;
  best.beam = beam;
  best.run = run.id;
}

const toExtreme = ({ beam, run }: Best, value: number): Extreme => ({
  value: rounded(value),
  at: { uMm: rounded(beam?.uMm ?? 0), yMm: rounded(beam?.yMm ?? 0), zMm: rounded(beam?.zMm ?? 0) },
  run,
});

const NMM_PER_KNM = 1e6;
