import { Beam, Container, FreeLoad, Lock, Opening, Pad, Post, Seat, Tie } from "@cornerway/schema";
import type { ElementOf } from "@cornerway/schema";
import type { z } from "zod";
import { beamFields, lockFields, postFields, seatFields, tieFields } from "../fields/added-steel-fields.ts";
import { padFields } from "../fields/ground-fields.ts";
import { freeLoadFields } from "../fields/load-fields.ts";
import { openingFields, settleFraming } from "../fields/opening-fields.ts";
import { unitFields } from "../fields/unit-fields.ts";
import type { PartField } from "../part/part-field.ts";
import type { PartList } from "./part-list.ts";

export interface PartTable<E> {
  schema: z.ZodType<E>;
  fields: (element: E) => readonly PartField[];
  settle?: (element: object) => object;
}

export const partTables: { readonly [N in PartList]: PartTable<ElementOf<N>> } = {
  containers: { schema: Container, fields: () => unitFields },
  openings: { schema: Opening, fields: () => openingFields, settle: settleFraming },
  posts: { schema: Post, fields: () => postFields },
  pads: { schema: Pad, fields: () => padFields },
  beams: { schema: Beam, fields: () => beamFields },
  seats: { schema: Seat, fields: () => seatFields },
  ties: { schema: Tie, fields: () => tieFields },
  locks: { schema: Lock, fields: () => lockFields },
  freeLoads: { schema: FreeLoad, fields: ({ shape }) => freeLoadFields(shape) },
};
