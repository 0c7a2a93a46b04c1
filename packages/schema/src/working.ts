import { z } from "zod";
import { Certainty } from "./verdict.ts";

const WorkingValue = z.strictObject({ symbol: z.string(), value: z.number(), unit: z.string() });

const WorkingStep = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("value"),
    symbol: z.string(),
    formula: z.string(),
    substituted: z.string(),
    result: z.number(),
    unit: z.string(),
    place: z.string().optional(),
  }),
  z.strictObject({
    kind: z.literal("condition"),
    left: z.string(),
    relation: z.enum(["<=", "<", ">=", ">"]),
    right: z.string(),
    leftValue: z.number(),
    rightValue: z.number(),
    holds: z.boolean(),
    place: z.string().optional(),
  }),
]);

/** A calculation as screen, interface and print all show it; `parts` are workings whose results enter it. */
export const CheckWorking = z
  .strictObject({
    title: z.string(),
    clause: z.strictObject({ document: z.string(), edition: z.string(), place: z.string(), certainty: Certainty }),
    /** The weakest of the clause, the symbols and the parts. */
    certainty: Certainty,
    symbols: z
      .array(
        z.strictObject({
          symbol: z.string(),
          meaning: z.string(),
          value: z.number(),
          unit: z.string(),
          source: z.string().optional(),
          certainty: Certainty,
        }),
      )
      .readonly(),
    steps: z.array(WorkingStep).readonly(),
    result: WorkingValue,
    limit: WorkingValue.optional(),
    utilisation: z.number().optional(),
    notes: z.array(z.string()).readonly(),
    get parts(): z.ZodReadonly<z.ZodArray<typeof CheckWorking>> {
      return z.array(CheckWorking).readonly();
    },
  })
  .meta({ id: "CheckWorking" });
export type CheckWorking = z.infer<typeof CheckWorking>;
