import { z } from "zod";
import { Stamp } from "./review.ts";
import { Standing } from "./standing.ts";

/** A stamp, and whether what it was pressed on is still what is there. */
export const StampNow = z.strictObject({ stamp: Stamp, standing: Standing }).meta({ id: "StampNow" });
export type StampNow = z.infer<typeof StampNow>;
