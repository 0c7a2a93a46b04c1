/** Tables that a revision is saved as, by name; comments of the authority and prices have routes of their own. */
export const revisionTables = [
  ...["units", "openings", "cut-plan", "members", "loads", "checks", "reactions", "connections"],
  ...["survey", "inspections", "deferred", "submittals"],
] as const;
export type RevisionTable = (typeof revisionTables)[number];
