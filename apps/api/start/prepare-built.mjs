import { ensureBuilt } from "./build.mjs";
import { ensureInstalled } from "./install.mjs";

/**
 * Everything a clone needs before its built service can run.
 * @param {import("./prepare-clone.mjs").StepControl} control
 */
export async function prepareBuilt(control) {
  await ensureInstalled(control);
  await ensureBuilt(control);
}
