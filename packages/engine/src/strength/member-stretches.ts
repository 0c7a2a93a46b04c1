import { findSection } from "../catalog/sections/find-section.ts";
import { containerMembers, doorHeader } from "../catalog/sections/container-members.ts";
import { frameTube, windowTube } from "../catalog/sections/frame-tubes.ts";
import { measuredSection } from "../catalog/sections/measured-section.ts";
import type { PressedSection, Section, TubeSection } from "../catalog/sections/section.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import type { CheckedElement } from "../checks/limit-state.ts";
import type { Measurable } from "../model/measured-steel.ts";
import type { UnitLines, UnitOpening } from "../model/unit-lines.ts";
import { steelOf, type MemberStretch } from "./member-part.ts";
import type { UnitBeam } from "./unit-beams.ts";

type Stretch = Omit<MemberStretch, "ownerId" | "forces">;
type Named = { readonly place: string; readonly member: CheckedMember };

/**
 * The members of a container in stretches with the same strengths. What holds them between (sheet along the rails, cross
 * members and roof sheet across them, floor boards on the cross members) is common practice, no published source.
 */
export function memberStretches(
  unitId: string,
  beams: readonly UnitBeam[],
  lines: UnitLines,
  sectionOfPost: (side: "left" | "right", uMm: number) => string,
): Stretch[] {
  const found = new Map<string, { named: Named; beams: UnitBeam[] }>();
  for (const beam of beams) {
    const named = nameOf(beam, beams, lines, sectionOfPost);
    if (named === undefined) continue;
    const key = `${unitId} ${named.member.element} ${named.place}`;
    const known = found.get(key);
    if (known === undefined) found.set(key, { named, beams: [beam] });
    else known.beams.push(beam);
  }
  return [...found.values()].map(({ named, beams: own }) => ({ ...named, beams: own }));
}

function nameOf(
  beam: UnitBeam,
  beams: readonly UnitBeam[],
  lines: UnitLines,
  sectionOfPost: (side: "left" | "right", uMm: number) => string,
): Named | undefined {
  const held = lines.lengthMm / lines.floorBays;
  const across = (element: CheckedElement, place: string, section: Section, lengthMm: number): Named => ({
    place,
    member: memberOf(element, section, { lengthMm, heldMm: lengthMm }),
  });
  const steel = (member: Measurable, section: PressedSection | TubeSection): Section =>
    measuredSection(section, lines.measured?.[member]);
  switch (beam.kind) {
    case "bottomRail":
      return railOf(beam, lines, "bottom", steel("bottom side rail", bottomRailOf(lines)));
    case "topRail":
      return railOf(beam, lines, "top", steel("top side rail", containerMembers["top side rail"]));
    case "cross":
      return {
        place: "all",
        member: memberOf("cross member", steel("cross member", containerMembers["cross member"]), {
          lengthMm: lines.widthMm,
          heldMm: held,
        }),
      };
    case "frontEndbottomRail":
      return { place: "front", member: sillOf(steel("bottom end rail", containerMembers["front sill"]), lines) };
    case "doorEndbottomRail":
      return { place: "door", member: sillOf(steel("door sill", containerMembers["door sill"]), lines) };
    case "frontEndtopRail":
      return {
        place: "front",
        member: memberOf("front header", steel("top end rail", containerMembers["front header"]), endOf(lines)),
      };
    case "doorEndtopRail":
      return across("door header", "door", steel("door header", assumedDoorHeader), lines.widthMm);
    case "header":
      return across("added beam", `over the opening ${spanAt(beam, lines)}`, barOf(beam), openingWidth(beam, lines));
    case "lintel":
      return across(
        "added beam",
        `of the window ${wallOf(beam, lines)} ${metres(beam.zMm)} m up`,
        barOf(beam),
        lines.heightMm,
      );
    case "jamb":
    case "addedPost":
      return uprightOf(beam, beams, lines, sectionOfPost);
    default:
      return undefined;
  }
}

/** Of an end: its whole width upright, between what is screwed or welded to it across: six times, common practice. */
const endOf = ({ widthMm }: UnitLines) => ({ lengthMm: widthMm, heldMm: widthMm / 6 });

/**
 * Floor boards end on a sill and are screwed to its head, as on the cross members: they hold it across and against turning, and
 * not upright. Its foot they do not hold: where the end sways as a portal the foot is pressed over half the width.
 */
const sillOf = (section: Section, lines: UnitLines): CheckedMember => ({
  ...memberOf("sill", section, endOf(lines)),
  unbracedMm: lines.widthMm / 2,
});

/** A rail: along its sheet held by it, over an opening free from edge to edge in the plane of the wall. */
function railOf(beam: UnitBeam, lines: UnitLines, rail: "top" | "bottom", section: Section): Named {
  const held = lines.lengthMm / lines.floorBays;
  const over = openingAt(beam, lines, rail);
  const member = memberOf(`${rail} side rail`, section, { lengthMm: over?.widthMm ?? held, heldMm: held });
  return { place: over === undefined ? beam.side : `${beam.side} over ${over.name}`, member };
}

function uprightOf(
  beam: UnitBeam,
  beams: readonly UnitBeam[],
  lines: UnitLines,
  sectionOfPost: (side: "left" | "right", uMm: number) => string,
): Named {
  const chain = beams.filter(
    ({ kind, uMm, yMm }) => kind === beam.kind && Math.abs(uMm - beam.uMm) < 1 && Math.abs(yMm - beam.yMm) < 1,
  );
  const lengthMm = chain.reduce((sum, one) => sum + one.lengthMm, 0);
  const place = `${wallOf(beam, lines)} at ${metres(beam.uMm)} m`;
  if (beam.kind === "jamb") {
    return { place, member: memberOf("jamb", barOf(beam), { lengthMm, heldMm: lengthMm }) };
  }
  const section = findSection(sectionOfPost(beam.side, beam.uMm)) ?? frameTube;
  return { place, member: memberOf("added post", section, { lengthMm, heldMm: lengthMm }) };
}

const added: readonly CheckedElement[] = ["added post", "added beam", "jamb"];

const memberOf = (
  element: CheckedElement,
  section: Section,
  { lengthMm, heldMm }: { readonly lengthMm: number; readonly heldMm: number },
): CheckedMember => ({
  element,
  section,
  steel: steelOf(added.includes(element)),
  lengths: { strongMm: lengthMm, weakMm: heldMm, twistMm: heldMm },
  unbracedMm: heldMm,
  cb: 1,
});

/** A sheet edge this near to a rail leaves it on its own. */
const STRIP_MM = 300;

function openingAt(
  beam: UnitBeam,
  lines: UnitLines,
  rail: "top" | "bottom",
): { readonly name: string; readonly widthMm: number } | undefined {
  const reaches = (cut: UnitOpening): boolean =>
    rail === "bottom" ? cut.v0 < lines.bottomRailMm + STRIP_MM : cut.v1 > lines.topRailMm - STRIP_MM;
  const cut = lines.openings.find(
    (one) => one.wall === beam.side && one.u0 < beam.uMm && beam.uMm < one.u1 && reaches(one),
  );
  if (cut === undefined) return undefined;
  const [from, to] = betweenPosts(beam, cut, lines);
  return { name: `${metres(from)}–${metres(to)} m`, widthMm: to - from };
}

/** The part of an opening the line lies in, between posts that stand on something. */
function betweenPosts(beam: UnitBeam, { u0, u1 }: UnitOpening, { posts }: UnitLines): [number, number] {
  const held = posts.filter(({ side, footed }) => side === beam.side && footed).map(({ u }) => u);
  return [Math.max(u0, ...held.filter((u) => u <= beam.uMm)), Math.min(u1, ...held.filter((u) => u > beam.uMm))];
}

const openingWidth = (beam: UnitBeam, lines: UnitLines): number =>
  openingAt(beam, lines, "top")?.widthMm ?? lines.lengthMm;
const spanAt = (beam: UnitBeam, lines: UnitLines): string =>
  `${beam.side} ${openingAt(beam, lines, "top")?.name ?? ""}`;

function wallOf({ uMm, yMm, side }: UnitBeam, { widthMm }: UnitLines): string {
  const inFront = uMm < 1 && Math.abs(yMm) < widthMm / 2 - 1;
  return inFront ? "front" : side;
}

/** Rails of short units are lower. */
const SHORT_MM = 7000;
const bottomRailOf = ({ lengthMm }: UnitLines): PressedSection =>
  lengthMm < SHORT_MM ? containerMembers["bottom side rail, 20 ft"] : containerMembers["bottom side rail"];

/** Common practice, no published source: the lower of the headers specified. */
const assumedDoorHeader = doorHeader(150, 100);

/** Bars of frames go by the name of their section in the model. */
const barOf = ({ section }: UnitBeam): Section =>
  findSection(section) ?? (section === windowTube.name ? windowTube : frameTube);

const metres = (mm: number): string => (Math.round(mm / 10) / 100).toFixed(2);
