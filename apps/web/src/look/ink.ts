import type { Verdict } from "@cornerway/schema";

/** Materials by name, so that a drawing never holds a colour of its own. */
export const ink = {
  paper: "var(--paper)",
  slip: "var(--slip)",
  shade: "var(--shade)",
  ink: "var(--ink)",
  graphite: "var(--graphite)",
  pencil: "var(--graphite-2)",
  slate: "var(--slate)",
  prussian: "var(--prussian)",
  mulberry: "var(--mulberry)",
  rust: "var(--rust)",
  ochre: "var(--ochre)",
  wash: "var(--ochre-wash)",
} as const;

/** Line weights in px: border and ground; outline and cut walls; edges; dimensions and leaders; corrugation and hatch. */
export const weight = { border: 2.4, profile: 1.8, edge: 1.1, fine: 0.75, hair: 0.5 } as const;

/** Dash families: behind or below; above the cut plane; grid; proposed. */
export const dash = { hidden: "5 3", overhead: "9 3 2 3", centre: "16 3 3 3", proposed: "7 4" } as const;

export const verdictInk: Readonly<Record<Verdict, string>> = {
  "works as built": ink.slate,
  "works with steel": ink.prussian,
  "needs the engineer": ink.mulberry,
  "does not work": ink.rust,
  "not checked": ink.graphite,
};
