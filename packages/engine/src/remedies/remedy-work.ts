import type { RemedyStep } from "@cornerway/schema";
import type { SharedStep } from "../strength/shared-work.ts";

/** A search as it goes: steps that people are told, which have a kind, and what is asked of helpers. */
export type RemedyWork<Answer> = Generator<RemedyStep | SharedStep, Answer, unknown>;
