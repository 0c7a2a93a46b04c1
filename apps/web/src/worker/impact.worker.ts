import { assess, impact, type Drawn } from "@cornerway/engine";
import { standingJudgements, type Judgement, type Scheme } from "@cornerway/schema";
import type { ImpactAnswer, ImpactGround, ImpactQuestion } from "./impact-messages.ts";

let ground: { of: ImpactGround; assessed: { before: Drawn; standing: Judgement[] } | null } | null = null;

/** What an edit would undo, on a thread of its own: by geometry and load path, which answer at once. */
addEventListener("message", ({ data }: MessageEvent<ImpactQuestion>) => {
  if (data.kind === "ground") ground = { of: data.ground, assessed: null };
  else postMessage(answer(data));
});

function answer({ turn, after }: Extract<ImpactQuestion, { kind: "edit" }>): ImpactAnswer {
  try {
    if (ground === null) throw new Error("an edit came before its ground");
    ground.assessed ??= assessed(ground.of);
    const { before, standing } = ground.assessed;
    return { turn, impact: impact(before, drawn(after), standing) };
  } catch (error) {
    return { turn, broke: error instanceof Error ? error.message : String(error) };
  }
}

const drawn = (scheme: Scheme): Drawn => ({ scheme, result: assess(scheme) });

const assessed = ({ before, newest, given }: ImpactGround) => ({
  before: drawn(before),
  standing: newest === null ? [] : standingJudgements(given, { letter: newest.letter, ...drawn(newest.scheme) }),
});
