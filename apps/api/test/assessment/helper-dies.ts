import { parentPort } from "node:worker_threads";
import { emptyScheme } from "@cornerway/schema";
import { assessSchemeShared } from "../../src/assessment/assess-scheme.ts";
import { startHelpers } from "../../src/assessment/start-helpers.ts";
import { digestOfScheme } from "../../src/store/digest-of-scheme.ts";
import { unit } from "../support/sample.ts";

const scheme = { ...emptyScheme, containers: [unit(1)] };
const helpers = startHelpers(1, new URL("./ends.mjs", import.meta.url));
parentPort?.on("message", () => void assessSchemeShared(scheme, digestOfScheme(scheme), helpers, () => undefined));
