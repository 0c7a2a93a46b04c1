import type { DemoProject } from "./demo-office.ts";

/** Where every demo project's ids begin; the last figures count what is made in it. */
export const demoProjectId = "5e1f0a10-0000-4000-8000-000000000100";

/** Invented: the house that the guides speak of. */
export const millraceYardProject: DemoProject = {
  ...{ id: demoProjectId, name: "Millrace Yard", place: "4 Sluice Row, Fenquill", client: "Jory Pellan" },
};

/** Sent once, judged under every load of its place, and waiting for the engineer. */
export const quarryStepsProject: DemoProject = {
  id: "5e1f0a10-0000-4000-8000-000000000400",
  ...{ name: "Quarry Steps", place: "1 Winding Hill, Fenquill", client: "Jory Pellan" },
};

/** Still on the architect's board. */
export const saltHouseProject: DemoProject = {
  id: "5e1f0a10-0000-4000-8000-000000000500",
  ...{ name: "Salt House", place: "9 Panners Lane, Fenquill", client: "Jory Pellan" },
};

export const demoProjects = [millraceYardProject, quarryStepsProject, saltHouseProject];
