import { calculationPagePlace } from "./calculation-flow.ts";
import { drawingPagePlace } from "./drawing-sheet.ts";
import type { Page } from "./page.ts";
import { text } from "./shapes.ts";

/** Each page with its "n of N", once all are there. */
export const numberPages = (pages: readonly Page[]): Page[] =>
  pages.map((page, at) => {
    const drawing = page.form === "drawing";
    const { x, y } = drawing ? drawingPagePlace(page) : calculationPagePlace(page);
    const words = `${at + 1} of ${pages.length}`;
    return {
      ...page,
      blocks: [...page.blocks, { role: "P", inks: [text(x, y, words, { size: drawing ? 11 : 8.6 })] }],
    };
  });
