import { catalogRows, engineVersion } from "@cornerway/engine";
import { Assessment, cautions, contentDigest, digestOf, readScheme, type RunDifference } from "@cornerway/schema";
import { z } from "zod";
import { jsonOf, readArchive, type WholeArchive } from "../archive/project-archive.ts";
import { assessScheme } from "../assessment/assess-scheme.ts";
import { runDifference } from "../rerun/run-difference.ts";
import { badInput, type Answer } from "./answer.ts";
import { commandWords, flag, text } from "./command-words.ts";
import { readBytes } from "./read-input.ts";

const RevisionRow = z.object({ letter: z.string(), ordinal: z.int(), content_digest: z.string(), scheme: z.unknown() });
const RunRow = z.object({
  ...{ letter: z.string(), attempt: z.int(), result: z.unknown(), result_digest: z.string().nullable() },
});

/** `rerun archive.zip [--revision B] [--json]`; undefined when the words are not that. */
export async function rerunAnswer(words: readonly string[]): Promise<Answer | undefined> {
  const asked = commandWords(words, { revision: text, json: flag });
  if (asked === undefined) return undefined;
  const { revision: letter, json: asJson = false } = asked.said;
  const source = await readBytes(asked.file);
  if (!source.ok) return source.answer;
  const found = await readArchive(source.bytes, {});
  if (!found.whole)
    return badInput(
      source.name,
      found.faults.map((detail) => ({ pointer: "", detail })),
    );
  return rerun(source.name, found.archive, { letter, asJson });
}

/** Runs a revision of an archive, the newest unless said, on the engine of this version, and tells what comes out otherwise. */
function rerun(
  name: string,
  { files }: WholeArchive,
  { letter, asJson }: { letter: string | undefined; asJson: boolean },
): Answer {
  const fault = (detail: string) => badInput(name, [{ pointer: "", detail }]);
  const revisions = z.array(RevisionRow).parse(jsonOf(files.get("rows/revision.json")));
  const ordered = revisions.toSorted((a, b) => a.ordinal - b.ordinal);
  const revision = letter === undefined ? ordered.at(-1) : ordered.find((each) => each.letter === letter);
  if (revision === undefined) return fault(letter === undefined ? "holds no revision" : `holds no revision ${letter}`);
  const runs = z.array(RunRow).parse(jsonOf(files.get("rows/assessment.json")));
  const ofRevision = runs.filter((run) => run.letter === revision.letter).toSorted((a, b) => a.attempt - b.attempt);
  const recorded = ofRevision.findLast((run) => run.result_digest !== null);
  const before = Assessment.safeParse(recorded?.result);
  const read = readScheme(revision.scheme);
  if (recorded?.result_digest == null) return fault(`revision ${revision.letter} has no recorded answer`);
  if (!before.success)
    return fault(`the recorded answer to revision ${revision.letter} has a form this version cannot read`);
  if (!read.ok) return fault(`the scheme of revision ${revision.letter} cannot be read by this version`);
  const content = contentDigest(read.scheme, digestOf(catalogRows));
  const after = assessScheme(read.scheme, content);
  const difference = runDifference({ assessment: before.data, resultDigest: recorded.result_digest }, after);
  if (asJson) return { out: `${JSON.stringify(difference)}\n`, err: "", code: 0 };
  const contentWords =
    content === revision.content_digest
      ? `content ${content}, as it was sent`
      : `content ${content}; it was sent on ${revision.content_digest}: the catalogue or the form of schemes has changed since`;
  const lines = [`${name}: revision ${revision.letter}`, contentWords, ...differenceLines(difference), ...cautions];
  return { out: `${lines.join("\n")}\n`, err: "", code: 0 };
}

/** The difference in lines: first whether there is any. */
function differenceLines({ before, after, same, scope, whole, units, ...lists }: RunDifference): string[] {
  const head = [
    `recorded: engine ${before.engineVersion}, ${whole.before}, result ${before.resultDigest}`,
    `now:      engine ${after.engineVersion}, ${whole.after}, result ${after.resultDigest}`,
  ];
  if (same) return [...head, "the same to the last digit"];
  const moved = units.length + Object.values(lists).flat().length;
  return [
    ...head,
    ...(before.engineVersion === engineVersion
      ? ["the same engine gives another answer: that is a fault, tell it"]
      : []),
    ...(scope.before === scope.after ? [] : [`judged then: ${scope.before}; now: ${scope.after}`]),
    ...(whole.before === whole.after ? [] : [`the whole: ${whole.before} → ${whole.after}`]),
    ...units.map(
      ({ unitId, before: was, after: is }) => `unit ${unitId}: ${was ?? "not told of"} → ${is ?? "not told of"}`,
    ),
    ...lists.appeared.map(({ markId, verdict }) => `new mark ${markId}: ${verdict}`),
    ...lists.gone.map(({ markId, verdict }) => `mark gone ${markId}: ${verdict}`),
    ...lists.turned.map(({ markId, before: was, after: is }) => `mark ${markId}: ${was} → ${is}`),
    ...lists.heavier.map(({ markId, verdict }) => `mark ${markId}: ${verdict}, by more than before`),
    ...(moved === 0 ? ["no verdict and no mark turned: numbers moved, or their workings"] : []),
  ];
}
