import { say } from "../../apps/api/start/say.mjs";
import { findProgram, installPackage } from "./system-package.mjs";

/**
 * Sees to it that pdftotext and pdfinfo are there, which read the printed set by another hand than the one that wrote it.
 * @param {AbortSignal} signal
 */
export async function ensurePoppler(signal) {
  if (findProgram(["pdftotext"]) !== undefined) return;
  await installPackage("poppler-utils", "poppler-utils, to read printed sets", signal);
  if (findProgram(["pdftotext"]) === undefined)
    say(
      "pdftotext was not found and could not be installed, so the tests of the printed set fail: install poppler-utils.",
    );
}
