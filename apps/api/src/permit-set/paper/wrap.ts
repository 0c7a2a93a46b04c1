import type { Face } from "./ink.ts";
import { widthOf } from "./typefaces.ts";

/** A text in lines no wider than `width`, pt. A word wider than the line is broken where it must be. */
export function wrap(text: string, face: Face, size: number, width: number): string[] {
  return text.split("\n").flatMap((paragraph) => wrapParagraph(paragraph, face, size, width));
}

function wrapParagraph(text: string, face: Face, size: number, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ").flatMap((each) => pieces(each, face, size, width))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && widthOf(longer, face, size) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}

function pieces(word: string, face: Face, size: number, width: number): string[] {
  if (widthOf(word, face, size) <= width) return [word];
  const parts: string[] = [];
  let part = "";
  for (const sign of word) {
    if (part !== "" && widthOf(part + sign, face, size) > width) {
      parts.push(part);
      part = sign;
    } else part += sign;
  }
  return [...parts, part];
}
