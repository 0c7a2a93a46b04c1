import type { Page } from "playwright-core";

/** What a screen reader is told of a tree of the drawing, by the browser itself: the name of each item, in order. */
export async function itemsRead(page: Page, tree: string): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send("Accessibility.getFullAXTree");
  await session.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const root = nodes.find(({ role, name }) => role?.value === "tree" && name?.value === tree);
  const names: string[] = [];
  const walk = (id: string): void => {
    const node = byId.get(id);
    if (node?.role?.value === "treeitem") names.push(String(node.name?.value ?? ""));
    node?.childIds?.forEach(walk);
  };
  if (root !== undefined) walk(root.nodeId);
  return names;
}

/** Parts of the page that would take time to change, by their class. */
export const whatMoves = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const longest = (durations: string) => Math.max(...durations.split(",").map((each) => Number.parseFloat(each)));
    const moving = [...document.querySelectorAll("*")].filter((part) => {
      const { transitionDuration, animationDuration, animationName } = getComputedStyle(part);
      return longest(transitionDuration) > 0 || (animationName !== "none" && longest(animationDuration) > 0);
    });
    return [...new Set(moving.map((part) => part.getAttribute("class") ?? part.localName))];
  });

/** Lettering and lines of the drawing that stand out from the page by less than WCAG 2.2 asks: 4.5 for text, 3 for lines. */
export const faintOnPaper = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const luminance = (colour: string): number => {
      const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number).map((part) => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const page = document.createElement("i");
    page.style.setProperty("background-color", "Canvas");
    document.body.append(page);
    const paper = luminance(getComputedStyle(page).backgroundColor);
    page.remove();
    const contrast = (colour: string): number => {
      const [low = 0, high = 0] = [luminance(colour), paper].toSorted((a, b) => a - b);
      return (high + 0.05) / (low + 0.05);
    };
    const faint = [...document.querySelectorAll(".paper text, .paper path, .paper line, .paper circle")].flatMap(
      (part) => {
        const { fill, stroke } = getComputedStyle(part);
        const isText = part.localName === "text";
        const colour = isText ? fill : stroke;
        // A line in the colour of the page itself is a halo: it is there to be nothing.
        if (!colour.startsWith("rgb(") || contrast(colour) < 1.01) return [];
        return contrast(colour) < (isText ? 4.5 : 3) ? [`${part.localName} ${colour}`] : [];
      },
    );
    return [...new Set(faint)];
  });

/**
 * Buttons whose words are lost in the colours of the system: filled with another colour than the page's, while their words
 * lie on a plate of the page's own, which they were to stand out from by being of its colour.
 */
export const lostWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const plain = document.createElement("i");
    plain.style.setProperty("background-color", "Canvas");
    document.body.append(plain);
    const canvas = getComputedStyle(plain).backgroundColor;
    plain.remove();
    return [...document.querySelectorAll("button")].flatMap((button) => {
      const { color, forcedColorAdjust } = getComputedStyle(button);
      return color === canvas && forcedColorAdjust !== "none" ? [button.textContent ?? ""] : [];
    });
  });
