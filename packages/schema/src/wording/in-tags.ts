/**
 * A run or a place as the engine names it, with the tag of each element in the stead of its id: "T pad b4 settled" reads
 * "T pad B4 settled". An id is a whole word; longer ones that hold others come first.
 */
export function inTags(text: string, names: ReadonlyMap<string, string>): string {
  const words = text.split(/([\s,;:()]+)/);
  return words.map((word) => names.get(word) ?? word).join("");
}
