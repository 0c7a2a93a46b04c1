import type { Opening } from "@cornerway/schema";
import { pt, type Ink, type Tone } from "../paper/ink.ts";
import { box, path, type Box } from "../paper/shapes.ts";

/** What stands in an opening by its use, within its clear rectangle on paper. */
export function openingInk(use: Opening["use"], at: Box, tone: Tone): Ink[] {
  const frame = box(at, { pen: "edge", fill: "paper", tone });
  switch (use) {
    case "door":
      return [frame, path(leaves(at, 3), { pen: "hair", tone })];
    case "window":
      return [frame, path(panes(at), { pen: "hair", tone })];
    case "passage":
    case "open-wall":
      return [
        box(at, { pen: "edge", fill: "paper", tone, dash: "hidden" }),
        path(crossed(at), { pen: "hair", tone: "ruling" }),
      ];
    case "hatch":
      return [frame, path(crossed(at), { pen: "hair", tone: "ruling" })];
  }
}

/** Leaves about as wide as 0.45 of the height, each with its panel and kick rail. */
function leaves({ x, y, width, height }: Box, inset: number): string {
  const count = Math.max(1, Math.round(width / (height * 0.45)));
  const each = width / count;
  const gap = Math.min(inset, each * 0.12);
  return Array.from({ length: count }, (_, index) => {
    const [left, right] = [x + index * each + gap, x + (index + 1) * each - gap];
    const kick = y + height * 0.82;
    const joint = index === 0 ? "" : `M${pt(x + index * each)} ${pt(y)}V${pt(y + height)}`;
    return `${joint}M${pt(left)} ${pt(y + height)}V${pt(y + gap)}H${pt(right)}V${pt(y + height)}M${pt(left)} ${pt(kick)}H${pt(right)}`;
  }).join("");
}

function panes({ x, y, width, height }: Box): string {
  const gap = Math.min(2, width * 0.08, height * 0.08);
  const count = Math.max(1, Math.round(width / Math.max(20, height * 0.85)));
  const inner = `M${pt(x + gap)} ${pt(y + gap)}H${pt(x + width - gap)}V${pt(y + height - gap)}H${pt(x + gap)}Z`;
  const mullions = Array.from({ length: count - 1 }, (_, index) => {
    const at = x + ((index + 1) * width) / count;
    return `M${pt(at)} ${pt(y + gap)}V${pt(y + height - gap)}`;
  });
  return inner + mullions.join("");
}

const crossed = ({ x, y, width, height }: Box): string =>
  `M${pt(x)} ${pt(y)}L${pt(x + width)} ${pt(y + height)}M${pt(x)} ${pt(y + height)}L${pt(x + width)} ${pt(y)}`;
