import { usualFineness } from "@cornerway/engine";
import { z } from "zod";
import type { Answer } from "./answer.ts";
import { chartCommand, type ChartAsked } from "./chart-command.ts";
import { commandWords, flag, text } from "./command-words.ts";
import { readInput } from "./read-input.ts";

const Millimetres = z.coerce.number().int().min(1).max(20_000);
const Asked = z.object({
  of: z.string(),
  face: z.enum(["left", "right", "front"]).optional(),
  sill: Millimetres.optional(),
  height: Millimetres.optional(),
  apart: z.coerce.number().int().min(50).max(3200).optional(),
});

/** `chart scheme.json --of F1 [--face right] [--sill 180] [--height 2200] [--apart 400] [--all-sets] [--csv | --json]`; undefined for other words. */
export async function chartAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const parsed = commandWords(words, {
    ...{ of: text, face: text, sill: text, height: text, apart: text },
    ...{ "all-sets": flag, csv: flag, json: flag },
  });
  const asked = Asked.safeParse(parsed?.said);
  if (parsed === undefined || !asked.success) return undefined;
  const { csv = false, json = false, "all-sets": allSets = false } = parsed.said;
  if (csv && json) return undefined;
  const input = await readInput(parsed.file);
  if (!input.ok) return input.answer;
  const { of, face, sill, height, apart = usualFineness.apartMm } = asked.data;
  const wanted: ChartAsked = {
    of,
    as: csv ? "csv" : json ? "json" : "text",
    fineness: { apartMm: apart, envelope: allSets ? "all sets" : usualFineness.envelope },
    ...(face && { face }),
    ...(sill !== undefined && { sillMm: sill }),
    ...(height !== undefined && { heightMm: height }),
  };
  return chartCommand(input, wanted);
}
