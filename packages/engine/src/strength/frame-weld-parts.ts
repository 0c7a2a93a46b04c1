import { e70Mpa, steels, type Steel } from "../catalog/materials.ts";
import type { Section } from "../catalog/sections/section.ts";
import type { Check } from "../checks/check.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import { weldFlow, type WeldStrengths, type WeldedEnd } from "../checks/frame-weld.ts";
import type { MemberDemand } from "../checks/member-demand.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import { refused } from "../working/resistance.ts";
import { demandRoom, DemandsAlong } from "./demands-along.ts";
import { linePlaces } from "./line-places.ts";
import type { MemberStretch } from "./member-part.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import type { UnitBeam } from "./unit-beams.ts";

/** A bar of an opening's frame, or a post, with the lines of the model it is made of. */
export type WeldedBar = Pick<MemberStretch, "ownerId" | "place" | "member" | "forces"> & {
  readonly beams: readonly UnitBeam[];
};

/**
 * The welds at the ends of a bar of a frame, of the stated detail: 5 mm of fillet all round the tube; common practice, no published
 * source. On a rail the rail is the thinner part.
 */
export function frameWeldPart(bar: WeldedBar, lines: UnitLines, basis: CheckBasis): StrengthPart[] {
  const { ownerId, member, forces } = bar;
  const { element, section } = member;
  const ends = barEnds(bar.beams).map((end) => ({ ...end, strength: strengthAt(end, section, lines, basis) }));
  const linesIn = linePlaces(ends.map(({ beam }) => beam));
  const outline = outlineOf(section);
  const along = new DemandsAlong();
  const room = demandRoom();
  const visit = (solved: SolvedRun, each: (demand: MemberDemand, strength: WeldStrengths) => void): void => {
    const { values, at } = forces(solved);
    linesIn(at).forEach((from, n) => {
      const end = ends[n];
      if (end === undefined) return;
      along.take(values, from, end.beam.lengthMm);
      along.write(end.far ? 1 : 0, room);
      each(room, end.strength);
    });
  };
  const useOf = (demand: MemberDemand, strength: WeldStrengths): number =>
    outline === undefined ? Infinity : useOfWeld(demand, outline, strength);
  const place = `${bar.place}, ends of the stated weld`;
  return [
    {
      id: `${ownerId} ${element} ${place}`,
      ...{ ownerId, element, place, level: "strength" },
      use: (solved) => {
        let most = 0;
        visit(solved, (demand, strength) => (most = Math.max(most, useOf(demand, strength))));
        return most;
      },
      decide: (solved) => {
        let [most, worst]: [number, readonly Check[]] = [-1, []];
        visit(solved, (demand, strength) => {
          const use = useOf(demand, strength);
          if (use > most)
            [most, worst] = [use, [basis.frameWeld({ element, limitState: "weld" }, { ...demand }, outline, strength)]];
        });
        return { limitState: "weld", utilisation: most, checks: () => worst };
      },
    },
  ];
}

/** Of weld whose strength is stated. */
const PIECE_MM = 100;
const WELD = { legMm: 5, lengthMm: PIECE_MM, electrodeMpa: e70Mpa, endLoaded: false, tubeEnd: true };

function useOfWeld(demand: MemberDemand, outline: WeldedEnd, { along, across }: WeldStrengths): number {
  if (!along.ok || !across.ok) return Infinity;
  return (PIECE_MM * weldFlow(demand, outline, along.available / across.available)) / along.available;
}

const outlineOf = (section: Section): WeldedEnd | undefined => (section.kind === "tube" ? section : undefined);

type BarEnd = { readonly beam: UnitBeam; readonly far: boolean; readonly zMm: number };

/** Ends of lines at which no other line of the bar goes on. */
function barEnds(beams: readonly UnitBeam[]): BarEnd[] {
  const all = beams.flatMap((beam) => [false, true].map((far) => ({ beam, far, at: endOf(beam, far) })));
  return all
    .filter((end) => !all.some((other) => other.beam !== end.beam && meets(other.at, end.at)))
    .map(({ beam, far, at: [, , zMm] }) => ({ beam, far, zMm }));
}

type Place = readonly [number, number, number];

const endOf = ({ from, to }: UnitBeam, far: boolean): Place => (far ? to : from);
const meets = (a: Place, b: Place): boolean => a.every((value, n) => Math.abs(value - (b[n] ?? NaN)) < 1);

/** Thickness of the rails' walls, mm: what a bar is welded to may be thinner than itself. */
const RAILS = { top: 3, bottom: 4.5 };

function strengthAt({ zMm }: BarEnd, section: Section, lines: UnitLines, basis: CheckBasis): WeldStrengths {
  if (section.kind !== "tube") {
    const none = refused("shape not covered by this check");
    return { along: none, across: none };
  }
  const onRail =
    Math.abs(zMm - lines.topRailMm) < 1 ? RAILS.top : Math.abs(zMm - lines.bottomRailMm) < 1 ? RAILS.bottom : Infinity;
  const thinner: { thicknessMm: number; steel: Steel } =
    onRail < section.wallMm
      ? { thicknessMm: onRail, steel: steels.unproved }
      : { thicknessMm: section.wallMm, steel: steels.tube };
  return {
    along: basis.fillet({ ...WELD, angleDegree: 0, thinner }),
    across: basis.fillet({ ...WELD, angleDegree: 90, thinner }),
  };
}
