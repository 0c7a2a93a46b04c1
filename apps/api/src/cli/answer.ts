/** What a command writes where, and how it ends: 0 assessed, 1 bad input, 2 internal. */
export type Answer = { readonly out: string; readonly err: string; readonly code: 0 | 1 | 2 };

/** Bad input: each line names the file and the place in it. */
export const badInput = (name: string, places: readonly { pointer: string; detail: string }[]): Answer => ({
  out: "",
  err: places.map(({ pointer, detail }) => `${name}: ${pointer === "" ? "" : `${pointer}: `}${detail}\n`).join(""),
  code: 1,
});
