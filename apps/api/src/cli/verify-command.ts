import { cautions } from "@cornerway/schema";
import { readArchive, recordName } from "../archive/project-archive.ts";
import { verifyBundle, type BundleFinding, type KnownOutside } from "../record/verify-bundle.ts";
import type { Answer } from "./answer.ts";

/** Checks a record's bundle without a database; `known` is what its reader has from elsewhere. */
export function verifyCommand(name: string, text: string, known: KnownOutside): Answer {
  const found = verifyBundle(text, known);
  return found.whole ? wholeAnswer(name, found) : altered(name, found.faults);
}

/** The same for a project's archive: besides its record, that every file in it is the one its maker stated and signed. */
export async function verifyArchive(name: string, bytes: Uint8Array, known: KnownOutside): Promise<Answer> {
  const { fingerprint } = known;
  const found = await readArchive(bytes, fingerprint === undefined ? {} : { fingerprint });
  if (!found.whole) return altered(name, found.faults);
  const { manifest, files } = found.archive;
  const record = verifyBundle(Buffer.from(files.get(recordName) ?? []).toString("utf8"), known);
  if (!record.whole) return altered(name, record.faults);
  const about = `archive made ${manifest.madeAt} with engine ${manifest.engineVersion}, ${manifest.files.length} files, each as stated`;
  return wholeAnswer(name, record, [about]);
}

const altered = (name: string, faults: readonly string[]): Answer => ({
  out: "",
  err: faults.map((fault) => `${name}: ALTERED: ${fault}\n`).join(""),
  code: 1,
});

function wholeAnswer(
  name: string,
  { bundle, withheld, originProved, broughtIn }: Extract<BundleFinding, { whole: true }>,
  more: readonly string[] = [],
): Answer {
  const { head, keys } = bundle;
  const lines = [
    `${name}: the record of ${bundle.name} (${bundle.project})`,
    `entries 1 to ${head.number}, each in its place, ${withheld === 0 ? "all opened" : `${withheld} withheld`}`,
    ...more,
    ...broughtIn.map(
      ({ upTo, head: theirs }) => `entries 1 to ${upTo} brought in, signed ${theirs.time} by ${theirs.fingerprint}`,
    ),
    `head ${head.head}, signed ${head.time}`,
    `key ${head.fingerprint}${keys.length > 1 ? `, last of a chain of ${keys.length} from ${keys[0]?.fingerprint}` : ""}`,
    originProved ? "whole, and from where it was expected" : "internally consistent, origin not proved",
    ...cautions,
  ];
  return { out: `${lines.join("\n")}\n`, err: "", code: 0 };
}
