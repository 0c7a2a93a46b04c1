import { elementById, type Scheme } from "@cornerway/schema";
import type { NameOf } from "./name-of.ts";

/** An element by what it is and its label: "seat S1", "door D1", "the stated steel of P1". */
export function kindOf(scheme: Scheme, id: string, nameOf: NameOf): string {
  const element = elementById(scheme, id);
  if (element === undefined) return nameOf(id);
  if ("upperId" in element) return `seat ${element.tag}`;
  if ("aId" in element) return `tie ${element.tag}`;
  if ("fitting" in element) return `${element.kind} ${element.tag}`;
  if ("shape" in element) return `load ${element.tag}`;
  if ("from" in element) return `beam ${element.tag}`;
  if ("elementId" in element) return `the stated steel of ${element.member ?? nameOf(element.elementId)}`;
  if ("sillUm" in element) return `${element.use.replace("-", " ")} ${element.tag}`;
  if ("baseZUm" in element) return `post ${element.tag}`;
  if ("depthUm" in element) return `${element.support ?? "pad"} ${element.tag}`;
  if ("occupancy" in element) return `the use of the ${element.surface}`;
  return nameOf(id);
}
