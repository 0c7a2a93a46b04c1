import { assessStrength } from "@cornerway/engine";
import { schemeOf, unitAt } from "./schemes.ts";

/** One unit on the ground with strength judged under gravity, as the service would record it. */
export const judgedScheme = schemeOf([unitAt("g1", "G1", 0, 0, 0)]);

const answer = assessStrength(judgedScheme);
if (!answer.accepted) throw new Error("there are no hazards to refuse");

export const { assessment: judgedAssessment, proof: judgedProof } = answer;
