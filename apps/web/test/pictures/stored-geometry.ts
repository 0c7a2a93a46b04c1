/** Px the geometry of a drawing is stored to. */
const stepPx = 0.5;

/**
 * A drawing as it is stored: one line an element, every number of its geometry rounded, ids that only this run has and
 * styles left out. Two drawings whose text is the same put the same ink in the same place.
 */
export function storedGeometry(drawn: Element): string {
  return `${linesOf(drawn, 0).join("\n")}\n`;
}

const geometry = new Set(
  ["d", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "width", "height", "transform", "points", "viewBox"].concat([
    "fill",
    "stroke",
    "stroke-width",
    "stroke-dasharray",
    "opacity",
    "text-anchor",
    "font-size",
    "data-element",
  ]),
);

function linesOf(element: Element, depth: number): string[] {
  if (element.localName === "defs" || element.localName === "title") return [];
  const attributes = [...element.attributes]
    .filter(({ name }) => geometry.has(name))
    .map(({ name, value }) => `${name}="${rounded(value)}"`)
    .toSorted();
  const words = element.children.length === 0 ? (element.textContent ?? "") : "";
  const head = [element.localName, ...attributes, ...(words === "" ? [] : [`“${words}”`])].join(" ");
  const below = [...element.children].flatMap((child) => linesOf(child, depth + 1));
  const isEmptyGroup = element.localName === "g" && below.length === 0;
  return isEmptyGroup ? [] : [`${" ".repeat(depth)}${head}`, ...below];
}

/** Every number of an attribute to the step; colours and names as they are. */
const rounded = (value: string): string =>
  value.startsWith("#") || value.startsWith("url(") || value.startsWith("var(")
    ? value
    : value.replace(/-?\d+(\.\d+)?/g, (number) => String(Math.round(Number(number) / stepPx) * stepPx + 0));
