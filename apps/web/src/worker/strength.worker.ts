import { assessedWith, hazardRefusalText, knownRun, strengthWhileDrawing, type LoadFlow } from "@cornerway/engine";
import type { CheckWorking, Scheme } from "@cornerway/schema";
import { SharedRun } from "./shared-run.ts";
import { startHelpers } from "./start-helpers.ts";
import type { ForcesAnswer, StrengthQuestion, StrengthWord } from "./strength-messages.ts";

const drawing = strengthWhileDrawing();
const shared = new SharedRun(drawing, startHelpers);
let judgedBefore = false;
let workings: ReadonlyMap<string, CheckWorking> = new Map();
/** Where the load goes in the scheme last asked about, which is named by its text. */
let flowing: { readonly of: string; readonly flow: LoadFlow } | undefined;

const tell = (word: StrengthWord) => postMessage(word);

/** The strength run on a thread of its own: it is ended from outside when the scheme changes under it. */
addEventListener("message", ({ data }: MessageEvent<StrengthQuestion>) => {
  if (data.kind === "working") tell({ kind: "working", id: data.id, working: workings.get(data.id) ?? null });
  else if (data.kind === "forces") tell({ kind: "forces", turn: data.turn, answer: forces(data.scheme, data.runs) });
  else void judge(data.turn, data.scheme);
});

function forces(scheme: Scheme, wanted: readonly string[]): ForcesAnswer | { why: string } {
  try {
    const name = JSON.stringify(scheme);
    if (flowing?.of !== name) flowing = { of: name, flow: drawing.flow(scheme) };
    const { flow } = flowing;
    if (!flow.accepted) return { why: flow.refusals.map(hazardRefusalText).join(" ") };
    const runs = flow.runs.map(({ id }) => id);
    const run = wanted.find((id) => runs.includes(id)) ?? runs[0];
    if (run === undefined) return { why: "Nothing acts on it." };
    return { run, runs, forces: flow.of({ run }) };
  } catch (error) {
    return { why: error instanceof Error ? error.message : String(error) };
  }
}

async function judge(turn: number, scheme: Scheme): Promise<void> {
  try {
    if (judgedBefore) glance(turn, scheme);
    const judged = await shared.full(scheme, (done, of) => tell({ kind: "progress", turn, done, of }));
    const answer = assessedWith(scheme, judged);
    judgedBefore = true;
    workings = new Map(answer.accepted ? answer.proof.workings.map(({ id, working }) => [id, working]) : []);
    const report = answer.accepted ? answer.proof.report : null;
    tell({ kind: "judged", turn, assessment: answer.assessment, report });
    if (judged.accepted) tell({ kind: "known", known: knownRun(scheme, judged) });
  } catch (error) {
    tell({ kind: "broke", turn, why: error instanceof Error ? error.message : String(error) });
  }
}

/** After a full run its governing vectors are looked at first: they are few. */
function glance(turn: number, scheme: Scheme): void {
  const live = drawing.live(scheme);
  if (live.accepted) tell({ kind: "glance", turn, parts: live.parts, vectors: live.vectors });
}
