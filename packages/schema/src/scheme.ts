import { z } from "zod";
import { Beam } from "./beam.ts";
import { CodeEdition, defaultBasis, DesignBasis, FloorUse } from "./design-basis.ts";
import { FreeLoad } from "./free-load.ts";
import { ElementId } from "./ids.ts";
import { Lock, Seat, Tie } from "./joints.ts";
import { Override } from "./override.ts";
import { AngleMdeg, LengthUm, PositiveLengthUm, PressurePa } from "./quantity.ts";
import { SectionName } from "./sections.ts";
import { Tag } from "./text.ts";

export const schemeVersion = 2;
export const mostContainers = 500;
export const mostOpenings = 5000;
export const mostPosts = 2000;
export const mostPads = 4000;
export const mostLoads = 5000;
export const mostBeams = 2000;
export const mostJoints = 4000;
export const mostOverrides = 2000;

/** ISO 668 designations. */
export const containerTypes = ["1EEE", "1EE", "1AAA", "1AA", "1A", "1BBB", "1BB", "1CCC", "1CC", "1C", "1D"] as const;
export const ContainerType = z.enum(containerTypes).meta({ id: "ContainerType" });
export type ContainerType = z.infer<typeof ContainerType>;

/**
 * One unit. Local axes: origin at the centre of the base, at the underside of the bottom fittings; x from the front
 * (blind) end to the door end, y to the left of x, z up. `turnMdeg` turns local x anticlockwise from east.
 */
export const Container = z
  .strictObject({
    id: ElementId,
    tag: Tag,
    type: ContainerType,
    xUm: LengthUm,
    yUm: LengthUm,
    /** Underside of the bottom fittings above site datum. */
    zUm: LengthUm,
    turnMdeg: AngleMdeg,
    /** Absent: the doors work and hold nothing. Welded shut they are a wall. */
    doors: z.literal("welded shut").exactOptional(),
    /** Tare on the container's own plate; absent: the range of its type. */
    plateTareKg: z.int().min(500).max(10_000).exactOptional(),
  })
  .meta({ id: "Container" });
export type Container = z.infer<typeof Container>;

/** `left` is local +y, `right` local −y: left and right of someone walking from the front end to the door end. */
export const faces = ["left", "right", "front", "door", "roof", "floor"] as const;
export const Face = z.enum(faces).meta({ id: "Face" });
export type Face = z.infer<typeof Face>;

export const openingUses = ["door", "window", "passage", "open-wall", "hatch"] as const;
export const OpeningUse = z.enum(openingUses).meta({ id: "OpeningUse" });

/** Steel round a framed opening; no sill where the opening runs down to the bottom rail. */
export const Framing = z
  .strictObject({ jamb: SectionName, header: SectionName, sill: SectionName.exactOptional() })
  .meta({ id: "Framing" });
export type Framing = z.infer<typeof Framing>;

/** When the sheet is cut: dead load acts on the structure that exists then. */
export const cutStages = ["after placing", "after shoring"] as const;

/**
 * A rectangular cut in a sheet. `offsetUm` runs along the face from the front end (left, right, roof, floor) or from
 * the right side (front, door); `sillUm` runs up from the underside of the bottom fittings, on roof and floor from the
 * right side towards the left. Both are measured from the outer faces of the fittings.
 */
export const Opening = z
  .strictObject({
    id: ElementId,
    tag: Tag,
    containerId: ElementId,
    face: Face,
    use: OpeningUse,
    offsetUm: LengthUm,
    sillUm: LengthUm,
    widthUm: PositiveLengthUm,
    heightUm: PositiveLengthUm,
    framed: z.boolean(),
    /** Sections of the framing; absent on a framed opening: the stated set. */
    framing: Framing.exactOptional(),
    /** Absent: cut in the yard, before the unit is lifted. */
    cut: z.enum(cutStages).exactOptional(),
  })
  .meta({ id: "Opening" });
export type Opening = z.infer<typeof Opening>;

/** Level as built against level as drawn, up positive. */
const LevelErrorUm = LengthUm.min(-100_000).max(100_000);

/** Added column. The section names a row of the section catalogue. */
export const Post = z
  .strictObject({
    id: ElementId,
    tag: Tag,
    xUm: LengthUm,
    yUm: LengthUm,
    baseZUm: LengthUm,
    topZUm: LengthUm,
    turnMdeg: AngleMdeg,
    section: SectionName,
    /** Level as built against drawn; absent: the project's error either way. */
    levelErrorUm: LevelErrorUm.exactOptional(),
  })
  .refine((post) => post.topZUm > post.baseZUm, { path: ["topZUm"], message: "the head must be above the foot" })
  .meta({ id: "Post" });
export type Post = z.infer<typeof Post>;

export const supportKinds = ["strip", "slab"] as const;

/** Foundation support; its top is what fittings and posts stand on. Sides run along the turned axes. */
export const Pad = z
  .strictObject({
    id: ElementId,
    tag: Tag,
    xUm: LengthUm,
    yUm: LengthUm,
    topZUm: LengthUm,
    lengthUm: PositiveLengthUm,
    widthUm: PositiveLengthUm,
    depthUm: PositiveLengthUm,
    turnMdeg: AngleMdeg,
    /** Absent: a pad by itself. */
    support: z.enum(supportKinds).exactOptional(),
    /** Absent: the project's error either way. */
    levelErrorUm: LevelErrorUm.exactOptional(),
    /** How far it goes down under its load; absent: the project's. */
    settlementUm: LengthUm.min(0).max(200_000).exactOptional(),
    /** Stiffness of the ground, kN/m³; absent: between the stated bounds. */
    subgradeKnPerM3: z.int().min(100).max(10_000_000).exactOptional(),
  })
  .meta({ id: "Pad" });
export type Pad = z.infer<typeof Pad>;

/** A load spread over the floor or roof of one unit: what is put in (imposed) or built on (finish). */
export const FloorLoad = z
  .strictObject({
    id: ElementId,
    containerId: ElementId,
    surface: z.enum(["floor", "roof"]),
    case: z.enum(["imposed", "finish"]),
    pressurePa: PressurePa,
  })
  .meta({ id: "FloorLoad" });
export type FloorLoad = z.infer<typeof FloorLoad>;

export const Site = z
  .strictObject({
    /** Direction of true north, anticlockwise from site +y; 0 when up on the plan is north. */
    northMdeg: AngleMdeg,
    groundZUm: LengthUm,
    /** The adopted building code edition; it selects loads and resistances together. */
    edition: CodeEdition,
  })
  .meta({ id: "Site" });
export type Site = z.infer<typeof Site>;

const sortedById = (elements: readonly { id: string }[]) =>
  elements.every((element, at) => at === 0 || (elements[at - 1]?.id ?? "") < element.id);

const collection = <T extends z.ZodType<{ id: string }>>(element: T, most: number) =>
  z.array(element).max(most).refine(sortedById, "must be sorted by id, each id once");

/** The whole arrangement under design. Strict: unknown fields are refused. */
export const Scheme = z
  .strictObject({
    version: z.literal(schemeVersion),
    site: Site,
    containers: collection(Container, mostContainers),
    openings: collection(Opening, mostOpenings),
    posts: collection(Post, mostPosts),
    pads: collection(Pad, mostPads),
    loads: collection(FloorLoad, mostLoads),
    freeLoads: collection(FreeLoad, mostLoads),
    uses: collection(FloorUse, 2 * mostContainers),
    beams: collection(Beam, mostBeams),
    seats: collection(Seat, mostJoints),
    ties: collection(Tie, mostJoints),
    locks: collection(Lock, mostJoints),
    overrides: collection(Override, mostOverrides),
    basis: DesignBasis,
  })
  .meta({ id: "Scheme" });
export type Scheme = z.infer<typeof Scheme>;

export const emptyScheme: Scheme = {
  version: schemeVersion,
  site: { northMdeg: 0, groundZUm: 0, edition: "IBC 2021" },
  containers: [],
  openings: [],
  posts: [],
  pads: [],
  loads: [],
  freeLoads: [],
  uses: [],
  beams: [],
  seats: [],
  ties: [],
  locks: [],
  overrides: [],
  basis: defaultBasis,
};
