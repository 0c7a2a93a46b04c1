/** Names of the components that the rest of a document leads to, directly or through others. */
export function reachedComponents(components: Record<string, unknown>, rest: unknown): Set<string> {
  const reached = new Set<string>();
  const waiting: unknown[] = [rest];
  while (waiting.length > 0) {
    for (const name of namesIn(waiting.pop())) {
      if (reached.has(name)) continue;
      reached.add(name);
      waiting.push(components[name]);
    }
  }
  return reached;
}

const namesIn = (part: unknown): string[] =>
  [...(JSON.stringify(part) ?? "").matchAll(/"#\/components\/schemas\/([^"]+)"/g)].map(([, name]) => name ?? "");
