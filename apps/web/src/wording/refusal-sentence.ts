import type { Refusal } from "@cornerway/schema";
import type { NameOf } from "./name-of.ts";
import { listOf } from "./list-of.ts";

/** Why the scheme cannot take a change, as the sheet says it. */
export function refusalSentence({ reason, elementId, by }: Refusal, nameOf: NameOf): string {
  const name = nameOf(elementId);
  switch (reason) {
    case "still-holds":
      return `${name} still holds ${listOf(by.map(nameOf))}. Take ${by.length === 1 ? "that" : "those"} away first.`;
    case "tag-taken":
      return `The label ${name} is taken by another part of the drawing.`;
    case "id-taken":
      return `${name} is on the drawing already.`;
    case "not-found":
      return `${listOf((by.length > 0 ? by : [elementId]).map(nameOf))} is not on the drawing any more.`;
    case "full":
      return "The sheet holds no more of these.";
    case "not-valid":
      return `The head of ${name} would be below its foot.`;
  }
}
