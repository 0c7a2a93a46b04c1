/** Letters a line of a note holds in the margin of a wide sheet, and lines of a folded note: as measured on the page. */
const lettersALine = 42;
const linesFolded = 2;
/** What stands for the rest, with the space before it. */
const ellipsis = " …";

/** A note's words in two parts: what is seen of it folded, ending with a sentence or else with a word, and the rest. */
export function foldedBody(text: string): { seen: string; rest: string } {
  if (linesOf(text) <= linesFolded) return { seen: text, rest: "" };
  const words = text.split(" ");
  const counts = words.map((_, at) => at + 1).filter((count) => fits(words.slice(0, count).join(" ")));
  if (counts.length === 0) return { seen: text, rest: "" };
  const sentence = counts.findLast((count) => endsSentence(words[count - 1]) && count * 2 >= counts.length);
  const count = sentence ?? counts.findLast((count) => !joins.test(words[count - 1] ?? "")) ?? counts.length;
  return { seen: words.slice(0, count).join(" "), rest: words.slice(count).join(" ") };
}

const fits = (text: string) => linesOf(text + ellipsis) <= linesFolded;

const endsSentence = (word = "") => /[.!?]$/.test(word);

/** Words after which a sentence cannot pause: a word in front of another, or a figure in front of its unit. */
const joins = /^(a|an|the|of|to|on|in|by|at|from|for|with|and|or|its|is|are|as|[\d.,]+)$/i;

/** Lines of a text broken between words. */
function linesOf(text: string): number {
  let lines = 1;
  let letters = 0;
  for (const word of text.split(" ")) {
    const longer = letters === 0 ? word.length : letters + 1 + word.length;
    if (longer <= lettersALine) letters = longer;
    else {
      lines += 1;
      letters = word.length;
    }
  }
  return lines;
}
