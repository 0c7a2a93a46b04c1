import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { TestProject } from "vitest/node";
import { ofTheBuilt } from "../../two-process/service-process.ts";
import { buildPages } from "./build-pages.ts";

const builtPages = path.resolve(import.meta.dirname, "../../../apps/web/dist");

declare module "vitest" {
  export interface ProvidedContext {
    /** Folder of the production build of the pages, made once for a run. */
    pagesFolder: string;
  }
}

/** The pages as `npm test` has built them, or built once for a run of the journeys, away from the build a person may be looking at. */
export default async function pagesForTests(project: TestProject): Promise<(() => void) | undefined> {
  if (ofTheBuilt) {
    project.provide("pagesFolder", builtPages);
    return undefined;
  }
  const folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-pages-"));
  const clear = () => rmSync(folder, { recursive: true, force: true });
  try {
    await buildPages(folder);
  } catch (error) {
    clear();
    throw error;
  }
  project.provide("pagesFolder", folder);
  return clear;
}
