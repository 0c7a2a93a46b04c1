import { createHash } from "node:crypto";
import { archiveLimits, canonicalJson, pointerTo, ProjectArchive, type RecordBundle } from "@cornerway/schema";
import { isKeyChain, isSigned, signed, type SigningKey } from "../record/record-key.ts";
import { isHeadSigned } from "../record/sign-head.ts";
import { verifyBundle } from "../record/verify-bundle.ts";
import { openZip, packZip } from "./zip.ts";

export const manifestName = "archive.json";
export const recordName = "record.json";

/** An archive that was read and holds together. */
export interface WholeArchive {
  manifest: ProjectArchive;
  bundle: RecordBundle;
  files: ReadonlyMap<string, Uint8Array>;
  /** SHA-256 of the archive as it came. */
  digest: string;
}

export type ArchiveFinding = { whole: true; archive: WholeArchive } | { whole: false; faults: readonly string[] };

type Unsigned = Omit<ProjectArchive, "files" | "signature">;

/** The archive as one file: `archive.json` first, which states every other file and is signed. */
export async function makeArchive(
  stated: Unsigned,
  files: ReadonlyMap<string, Uint8Array>,
  key: SigningKey,
): Promise<Uint8Array> {
  const unsigned = {
    ...stated,
    files: [...files].map(([name, bytes]) => ({ name, bytes: bytes.byteLength, digest: sha256(bytes) })),
  };
  const manifest: ProjectArchive = { ...unsigned, signature: signed(statement(unsigned), key.privateKey) };
  return packZip(new Map([[manifestName, Buffer.from(canonicalJson(manifest))], ...files]));
}

/**
 * Reads an archive and checks it before anything else is done with it: its size, that every file is the one stated, keys
 * and signatures, and the record in it, entry by entry. `fingerprint` is a key known from outside.
 */
export async function readArchive(bytes: Uint8Array, known: { fingerprint?: string }): Promise<ArchiveFinding> {
  const opened = await openZip(bytes, archiveLimits);
  if (!opened.ok) return { whole: false, faults: [opened.fault] };
  const { files } = opened;
  const read = readManifest(files.get(manifestName));
  if (!read.ok) return { whole: false, faults: read.faults };
  const { manifest } = read;
  const faults = [...fileFaults(manifest, files), ...signatureFaults(manifest)];
  if (faults.length > 0) return { whole: false, faults };
  const record = verifyBundle(textOf(files.get(recordName)), known);
  if (!record.whole) return { whole: false, faults: record.faults.map((fault) => `${recordName}: ${fault}`) };
  const apart = recordFaults(manifest, record.bundle);
  if (apart.length > 0) return { whole: false, faults: apart };
  return { whole: true, archive: { manifest, files, bundle: record.bundle, digest: sha256(bytes) } };
}

/** The JSON of a file of an archive that holds together. */
export const jsonOf = (bytes: Uint8Array | undefined): unknown => JSON.parse(textOf(bytes));

const textOf = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? new Uint8Array()).toString("utf8");

const sha256 = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

const statement = (unsigned: Omit<ProjectArchive, "signature">) => ({ ...unsigned, what: "project archive" });

function readManifest(
  bytes: Uint8Array | undefined,
): { ok: true; manifest: ProjectArchive } | { ok: false; faults: string[] } {
  if (bytes === undefined) return { ok: false, faults: [`there is no ${manifestName} in it`] };
  let value: unknown;
  try {
    value = jsonOf(bytes);
  } catch (error) {
    return { ok: false, faults: [`${manifestName}: is not JSON: ${error instanceof Error ? error.message : ""}`] };
  }
  const parsed = ProjectArchive.safeParse(value);
  if (parsed.success) return { ok: true, manifest: parsed.data };
  const places = parsed.error.issues.map(({ path, message }) => `${manifestName}: ${pointerTo(path)}: ${message}`);
  return { ok: false, faults: places };
}

function fileFaults({ files: stated }: ProjectArchive, files: ReadonlyMap<string, Uint8Array>): string[] {
  const names = new Set([manifestName, ...stated.map(({ name }) => name)]);
  const unstated = [...files.keys()].filter((name) => !names.has(name)).map((name) => `${name}: is not stated`);
  const altered = stated.flatMap(({ name, bytes, digest }) => {
    const found = files.get(name);
    if (found === undefined) return [`${name}: is missing`];
    return found.byteLength === bytes && sha256(found) === digest ? [] : [`${name}: is not the file that was stated`];
  });
  return [...unstated, ...altered];
}

function signatureFaults({ signature, ...unsigned }: ProjectArchive): string[] {
  const { keys, head } = unsigned;
  if (!isKeyChain(keys)) return ["the keys do not follow one another"];
  const signer = keys.at(-1);
  if (signer === undefined || signer.fingerprint !== head.fingerprint)
    return ["the head is signed by a key that is not the last one"];
  if (!isHeadSigned(head, signer.publicKey)) return ["the signature of the head does not hold"];
  return isSigned(statement(unsigned), signature, signer.publicKey)
    ? []
    : ["the signature of the archive does not hold"];
}

function recordFaults({ project, head }: ProjectArchive, bundle: RecordBundle): string[] {
  const hidden = bundle.entries.filter((entry) => "leaf" in entry).length;
  return [
    ...(bundle.project === project.id ? [] : [`${recordName}: is of another project`]),
    ...(bundle.head.head === head.head && bundle.head.number === head.number
      ? []
      : [`${recordName}: ends at another head than the archive`]),
    ...(hidden === 0 ? [] : [`${recordName}: hides ${hidden} entries; an archive holds all of them`]),
  ];
}
