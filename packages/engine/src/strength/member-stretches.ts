import { findSection } from "../catalog/sections/find-section.ts";
import { assumedDoorHeader, bottomSideRail, containerMembers } from "../catalog/sections/container-members.ts";
import { frameTube } from "../catalog/sections/frame-tubes.ts";
import { measuredSection } from "../catalog/sections/measured-section.ts";
import type { PressedSection, Section, TubeSection } from "../catalog/sections/section.ts";
import type { CheckedMember } from "../checks/checked-member.ts";
import type { CheckedElement } from "../checks/limit-state.ts";
import type { Measurable } from "../model/measured-steel.ts";
import { bareEdgeSaid } from "../model/bare-edges.ts";
import type { UnitLines } from "../model/unit-lines.ts";
import { lengthBeside } from "./bars-on-one-line.ts";
import { barOf, metres, openingAt, wallOf, windowWidth } from "./beam-at-opening.ts";
import { steelOf, type MemberStretch } from "./member-part.ts";
import type { UnitBeam } from "./unit-beams.ts";

type Stretch = Omit<MemberStretch, "ownerId" | "forces" | "beams"> & { readonly beams: readonly UnitBeam[] };
type Named = { readonly place: string; readonly member: CheckedMember; readonly said?: string };

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
      return railOf(beam, lines, "bottom", steel("bottom side rail", bottomSideRail(lines.lengthMm)));
    case "topRail":
      return railOf(beam, lines, "top", topRailOf(lines));
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
      return headerOf(beam, lines);
    case "lintel":
      return across(
        "added beam",
        `of the window ${wallOf(beam, lines)} ${metres(beam.zMm)} m up`,
        barOf(beam),
        windowWidth(beam, lines),
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

/**
 * A rail: along its sheet held by it, over an opening free from edge to edge in the plane of the wall, or as far as a post or
 * its header holds it.
 */
function railOf(beam: UnitBeam, lines: UnitLines, rail: "top" | "bottom", section: Section): Named {
  const held = lines.lengthMm / lines.floorBays;
  const over = openingAt(beam, lines, rail);
  const header = rail === "top" ? over?.header : undefined;
  const freeMm = over?.widthMm ?? held;
  const lengthMm = header === undefined ? freeMm : lengthBeside(section, header, freeMm);
  const member = memberOf(`${rail} side rail`, section, { lengthMm, heldMm: held });
  if (over === undefined) return { place: beam.side, member };
  return { place: `${beam.side} over ${over.name}`, member, ...(over.bare && { said: bareEdgeSaid }) };
}

/** A header is welded along its rail: roof and rail hold it across as they hold each other. */
function headerOf(beam: UnitBeam, lines: UnitLines): Named {
  const section = barOf(beam);
  const over = openingAt(beam, lines, "top");
  return {
    place: `over the opening ${beam.side} ${over?.name ?? ""}`,
    member: memberOf("added beam", section, {
      lengthMm: lengthBeside(section, topRailOf(lines), over?.widthMm ?? lines.lengthMm),
      heldMm: lines.lengthMm / lines.floorBays,
    }),
  };
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

const topRailOf = ({ measured }: UnitLines): Section =>
  measuredSection(containerMembers["top side rail"], measured?.["top side rail"]);
