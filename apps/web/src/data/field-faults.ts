import { ServiceProblem } from "./http.ts";

/** What the service said of one field, by its JSON pointer; undefined when it said nothing. */
export const faultOf = (error: unknown, pointer: string): string | undefined =>
  error instanceof ServiceProblem
    ? error.problem.fields?.find((field) => field.pointer === pointer)?.detail
    : undefined;
