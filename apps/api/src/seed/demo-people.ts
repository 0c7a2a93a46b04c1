import type { Role } from "@cornerway/schema";

export interface DemoPerson {
  id: string;
  name: string;
  role: Role;
  email: string;
  /** Stated openly: the demo is for trying the service on one's own machine. */
  password: string;
}

/** Invented people of the demo project, one for each role. */
export const demoPeople: readonly DemoPerson[] = [
  {
    id: "5e1f0a10-0000-4000-8000-000000000001",
    name: "Tilda Varrow",
    role: "architect",
    email: "tilda@varrow.example",
    password: "demo-architect-draws-boxes",
  },
  {
    id: "5e1f0a10-0000-4000-8000-000000000002",
    name: "Emmet Quillon",
    role: "engineer",
    email: "emmet@quillon.example",
    password: "demo-engineer-reads-marks",
  },
  {
    id: "5e1f0a10-0000-4000-8000-000000000003",
    name: "Sabine Orrest",
    role: "checker",
    email: "sabine@orrest.example",
    password: "demo-checker-looks-twice",
  },
  {
    id: "5e1f0a10-0000-4000-8000-000000000004",
    name: "Jory Pellan",
    role: "owner",
    email: "jory@pellan.example",
    password: "demo-owner-wants-a-house",
  },
  {
    id: "5e1f0a10-0000-4000-8000-000000000005",
    name: "Nadia Wrensfield",
    role: "reader",
    email: "nadia@wrensfield.example",
    password: "demo-reader-reads-only",
  },
];
