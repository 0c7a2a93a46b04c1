/**
 * True when two drawn things are alike: plain numbers, texts and lists compared by value, anything held by the scheme by
 * identity first. Lets a memoised part of a drawing stay as it is while another part is dragged.
 */
export function sameDrawn(before: unknown, after: unknown): boolean {
  if (Object.is(before, after)) return true;
  if (typeof before !== "object" || typeof after !== "object" || before === null || after === null) return false;
  if (Array.isArray(before) !== Array.isArray(after)) return false;
  const keys = Object.keys(before);
  return (
    keys.length === Object.keys(after).length &&
    keys.every((key) => sameDrawn(Reflect.get(before, key), Reflect.get(after, key)))
  );
}
