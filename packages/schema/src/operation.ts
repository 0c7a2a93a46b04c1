import { z } from "zod";
import { ActId, ElementId } from "./ids.ts";
import { Beam } from "./beam.ts";
import { DesignBasis, FloorUse } from "./design-basis.ts";
import { FreeLoad } from "./free-load.ts";
import { Lock, Seat, Tie } from "./joints.ts";
import { Override } from "./override.ts";
import { AngleMdeg, LengthUm, PositiveLengthUm, PressurePa } from "./quantity.ts";
import { Container, ContainerType, FloorLoad, Opening, OpeningUse, Pad, Post, Site } from "./scheme.ts";

const on = ElementId;

/** How many operations are taken in one act: a building of 500 units moved or brought in with all that belongs to it. */
export const mostOperations = 5000;

/** One typed change to a scheme. Each names the element it writes; its inverse is computed when it is applied. */
export const Operation = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("container.place"), container: Container }),
    z.strictObject({ kind: z.literal("container.move"), id: on, xUm: LengthUm, yUm: LengthUm, zUm: LengthUm }),
    z.strictObject({ kind: z.literal("container.turn"), id: on, turnMdeg: AngleMdeg }),
    z.strictObject({ kind: z.literal("container.retype"), id: on, type: ContainerType }),
    z.strictObject({ kind: z.literal("container.remove"), id: on }),
    z.strictObject({ kind: z.literal("opening.cut"), opening: Opening }),
    z.strictObject({
      kind: z.literal("opening.shape"),
      id: on,
      offsetUm: LengthUm,
      sillUm: LengthUm,
      widthUm: PositiveLengthUm,
      heightUm: PositiveLengthUm,
    }),
    z.strictObject({ kind: z.literal("opening.dress"), id: on, use: OpeningUse, framed: z.boolean() }),
    z.strictObject({ kind: z.literal("opening.close"), id: on }),
    z.strictObject({ kind: z.literal("post.set"), post: Post }),
    z.strictObject({ kind: z.literal("post.move"), id: on, xUm: LengthUm, yUm: LengthUm }),
    z.strictObject({ kind: z.literal("post.length"), id: on, baseZUm: LengthUm, topZUm: LengthUm }),
    z.strictObject({ kind: z.literal("post.remove"), id: on }),
    z.strictObject({ kind: z.literal("pad.set"), pad: Pad }),
    z.strictObject({ kind: z.literal("pad.move"), id: on, xUm: LengthUm, yUm: LengthUm, topZUm: LengthUm }),
    z.strictObject({ kind: z.literal("pad.remove"), id: on }),
    z.strictObject({ kind: z.literal("load.put"), load: FloorLoad }),
    z.strictObject({ kind: z.literal("load.change"), id: on, pressurePa: PressurePa }),
    z.strictObject({ kind: z.literal("load.remove"), id: on }),
    z.strictObject({ kind: z.literal("site.change"), site: Site }),
    /** These carry the whole element as it is to be; its id stays. */
    z.strictObject({ kind: z.literal("container.change"), container: Container }),
    z.strictObject({ kind: z.literal("opening.change"), opening: Opening }),
    z.strictObject({ kind: z.literal("post.change"), post: Post }),
    z.strictObject({ kind: z.literal("pad.change"), pad: Pad }),
    z.strictObject({ kind: z.literal("beam.set"), beam: Beam }),
    z.strictObject({ kind: z.literal("beam.change"), beam: Beam }),
    z.strictObject({ kind: z.literal("beam.remove"), id: on }),
    z.strictObject({ kind: z.literal("seat.set"), seat: Seat }),
    z.strictObject({ kind: z.literal("seat.change"), seat: Seat }),
    z.strictObject({ kind: z.literal("seat.remove"), id: on }),
    z.strictObject({ kind: z.literal("tie.set"), tie: Tie }),
    z.strictObject({ kind: z.literal("tie.change"), tie: Tie }),
    z.strictObject({ kind: z.literal("tie.remove"), id: on }),
    z.strictObject({ kind: z.literal("lock.set"), lock: Lock }),
    z.strictObject({ kind: z.literal("lock.change"), lock: Lock }),
    z.strictObject({ kind: z.literal("lock.remove"), id: on }),
    z.strictObject({ kind: z.literal("free-load.put"), load: FreeLoad }),
    z.strictObject({ kind: z.literal("free-load.change"), load: FreeLoad }),
    z.strictObject({ kind: z.literal("free-load.remove"), id: on }),
    z.strictObject({ kind: z.literal("use.set"), use: FloorUse }),
    z.strictObject({ kind: z.literal("use.change"), use: FloorUse }),
    z.strictObject({ kind: z.literal("use.remove"), id: on }),
    z.strictObject({ kind: z.literal("override.set"), override: Override }),
    z.strictObject({ kind: z.literal("override.change"), override: Override }),
    z.strictObject({ kind: z.literal("override.remove"), id: on }),
    z.strictObject({ kind: z.literal("basis.change"), basis: DesignBasis }),
  ])
  .meta({ id: "Operation" });
export type Operation = z.infer<typeof Operation>;
export type OperationKind = Operation["kind"];

/** One drawing act: what one drop, one typed number or one tool press does, applied whole or not at all. */
export const DraftAct = z
  .strictObject({
    id: ActId,
    /** Draft number on the screen of whoever acts. */
    base: z.int().min(0),
    operations: z.array(Operation).min(1).max(mostOperations),
    /** The act this one takes back, when it is an undo. */
    undoes: ActId.optional(),
  })
  .meta({ id: "DraftAct" });
export type DraftAct = z.infer<typeof DraftAct>;

/** An act taken back by its id, with the inverse that the record has. */
export const TakeBack = z.strictObject({ id: ActId, base: z.int().min(0) }).meta({ id: "TakeBack" });
export type TakeBack = z.infer<typeof TakeBack>;
