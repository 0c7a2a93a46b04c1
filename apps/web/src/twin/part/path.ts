/** The value at a dotted path of an element: "from.xUm"; undefined where there is none. */
export function valueAt(element: object, path: string): unknown {
  return path
    .split(".")
    .reduce<unknown>((value, key) => (isObject(value) ? Reflect.get(value, key) : undefined), element);
}

/** A copy with a value at a dotted path; without the key where the value is undefined, and without objects left empty. */
export function withValueAt(element: object, path: string, value: unknown): object {
  const [key = "", ...rest] = path.split(".");
  const copy: Record<string, unknown> = { ...element };
  if (rest.length === 0) return put(copy, key, value);
  const inner = copy[key];
  const changed = withValueAt(isObject(inner) ? inner : {}, rest.join("."), value);
  return put(copy, key, Object.keys(changed).length === 0 ? undefined : changed);
}

function put(copy: Record<string, unknown>, key: string, value: unknown): object {
  if (value !== undefined) return { ...copy, [key]: value };
  return Object.fromEntries(Object.entries(copy).filter(([other]) => other !== key));
}

const isObject = (value: unknown): value is object => typeof value === "object" && value !== null;
