import { z } from "zod";
import { cautions } from "./cautions.ts";
import { ActId, Digest } from "./ids.ts";
import { RevisionLetter } from "./review.ts";
import { Scheme } from "./scheme.ts";
import { pointerTo, readScheme, type ReadScheme } from "./upgrade-scheme.ts";

export const schemeFileFormat = "cornerway-scheme";
export const schemeFileVersion = 1;

/** A scheme as a file: what it is, what it was when it was saved, and the cautions that go with every export. */
export const SchemeFile = z
  .strictObject({
    format: z.literal(schemeFileFormat),
    version: z.literal(schemeFileVersion),
    cautions: z.array(z.string()),
    project: z.string(),
    /** The letter of the revision it was saved from; null when it was the draft. */
    revision: RevisionLetter.nullable(),
    /** Of the scheme under the catalogue of the service that saved it. */
    contentDigest: Digest,
    scheme: Scheme,
  })
  .meta({ id: "SchemeFile" });
export type SchemeFile = z.infer<typeof SchemeFile>;

export const schemeFile = (saved: Omit<SchemeFile, "format" | "version" | "cautions">): SchemeFile => ({
  ...{ format: schemeFileFormat, version: schemeFileVersion, cautions: [...cautions] },
  ...saved,
});

/** Of a file that someone brings in, only what is drawn counts: the rest may be left out, and says nothing of the scheme. */
const Envelope = z.looseObject({
  format: z.literal(schemeFileFormat, `not a scheme file: format is to be "${schemeFileFormat}"`),
  version: z.literal(schemeFileVersion, `only version ${schemeFileVersion} of the file is known here`),
  scheme: z.unknown(),
});

/** Reads a scheme file whose scheme is of this or an older version; never throws on bad input, says where and what. */
export function readSchemeFile(value: unknown): ReadScheme {
  const envelope = Envelope.safeParse(value);
  if (!envelope.success) {
    const fields = envelope.error.issues.map(({ path, message }) => ({ pointer: pointerTo(path), detail: message }));
    return { ok: false, code: "body-invalid", fields };
  }
  const read = readScheme(envelope.data.scheme);
  if (read.ok) return read;
  return { ...read, fields: read.fields.map((field) => ({ ...field, pointer: `/scheme${field.pointer}` })) };
}

/** A file brought into the draft: one act, which can be taken back like any other. */
export const BringIn = z
  .strictObject({
    id: ActId,
    /** Draft number on the screen of whoever acts: what was drawn since would be lost unseen, so it is refused. */
    base: z.int().min(0),
    /** A `SchemeFile`; an older version of the scheme is raised to this one. */
    file: z.unknown(),
  })
  .meta({ id: "BringIn" });
export type BringIn = z.infer<typeof BringIn>;
