import type { Problem, ProblemCode } from "@cornerway/schema";

/** Why something was not done, as a problem of the catalogue with what the person needs to mend it. */
export type Refusal = { code: ProblemCode } & Partial<Pick<Problem, "detail" | "fields" | "conflict">>;

/** What every service answers: expected outcomes are values, only faults are thrown. */
export type Outcome<T> = { ok: true; value: T } | { ok: false; refusal: Refusal };

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value });

export const refuse = (code: ProblemCode, more: Omit<Refusal, "code"> = {}): Outcome<never> => ({
  ok: false,
  refusal: { code, ...more },
});

/** A refusal that names one field of what was sent. */
export const refuseField = (code: ProblemCode, pointer: string, detail: string): Outcome<never> =>
  refuse(code, { detail, fields: [{ pointer, detail }] });
