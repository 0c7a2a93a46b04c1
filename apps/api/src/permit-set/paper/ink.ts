/** Widths of the pens, mm on paper (ISO 128 series, from memory): hair, fine, edge, profile, border. */
export const pens = { hair: 0.13, fine: 0.18, edge: 0.25, profile: 0.5, border: 0.7 } as const;
export type Pen = keyof typeof pens;

/** Dash families, pt on paper. */
export const dashes = {
  hidden: [3.6, 2.2],
  overhead: [6.5, 2.2, 1.4, 2.2],
  centre: [11, 2.2, 2.2, 2.2],
  ruling: [0.6, 1.8],
} as const;
export type Dash = keyof typeof dashes;

/** Ink prints black: shapes and hatches carry what colour carries on a screen. */
export const tones = {
  ink: "#000000",
  graphite: "#3a3a3a",
  pencil: "#777777",
  ruling: "#9a9a9a",
  wash: "#f0f0f0",
  band: "#e4e4e4",
  paper: "#ffffff",
} as const;
export type Tone = keyof typeof tones;

/** How a text is set: lettering (Source Sans 3), prose and formulas (STIX Two), digests (a fixed pitch). */
export const faces = ["lettering", "lettering strong", "lettering slanted", "prose", "digest"] as const;
export type Face = (typeof faces)[number];

/** A path of SVG commands, pt from the top left of the page. */
export type PathInk = {
  kind: "path";
  d: string;
  pen?: Pen;
  dash?: Dash;
  tone?: Tone;
  fill?: Tone;
};

/** One line of text from its baseline; `turn` in degrees anticlockwise about (x, y). */
export type TextInk = {
  kind: "text";
  x: number;
  y: number;
  text: string;
  face: Face;
  size: number;
  tone?: Tone;
  anchor?: "middle" | "end";
  turn?: number;
  /** Extra room after each sign, pt. */
  tracking?: number;
};

/** Where the digest of the set or of this page is printed: it is known only once the pages are made. */
export type DigestInk = { kind: "digest"; of: "set" | "page"; x: number; y: number; size: number; perLine: number };

export type Ink = PathInk | TextInk | DigestInk;

export const roles = ["H1", "H2", "H3", "P", "Figure", "Table", "TR", "TH", "TD", "Formula", "Artifact"] as const;
export type Role = (typeof roles)[number];

/** A piece of a page with its part in the reading order; an artifact is not read out. */
export type Block = { role: Role; alt?: string; inks: Ink[]; children?: Block[] };

/** Two decimals of a point: a three-hundredth of a millimetre. */
export const pt = (value: number): number => Math.round(value * 100) / 100 + 0;

export const ptPerMm = 72 / 25.4;
