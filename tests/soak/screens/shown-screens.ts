import type { Role } from "@cornerway/schema";

type Size = { readonly width: number; readonly height: number };

/** A desk, a large desk, a phone. */
export const sizes: readonly Size[] = [
  { width: 1440, height: 900 },
  { width: 1920, height: 1080 },
  { width: 390, height: 844 },
];

export type ShownScreen = {
  readonly name: string;
  readonly role: Role | "nobody";
  /** `:project` stands for the address of the project. */
  readonly address: string;
  /** What stands on the page once it is drawn. */
  readonly drawn?: string;
  /** Drawings of intent by the width they are drawn for. */
  readonly mocks?: Readonly<Record<number, string>>;
  readonly sizes?: readonly Size[];
};

const sheet = (n: number): string => `:project/sheet/${n}`;

/** Every screen, with whoever has most to do with it. */
export const shownScreens: readonly ShownScreen[] = [
  { name: "sign-in", role: "nobody", address: "/" },
  { name: "forgotten", role: "nobody", address: "/forgotten" },
  { name: "desk", role: "architect", address: "/", mocks: { 1440: "01-desk.png" } },
  { name: "sheet-1", role: "architect", address: sheet(1), drawn: ".note-number", mocks: { 1440: "02-sheet.png" } },
  { name: "sheet-2", role: "architect", address: sheet(2), drawn: ".chart-margin", mocks: { 1440: "03-opening.png" } },
  { name: "sheet-3", role: "engineer", address: sheet(3), drawn: ".note-number", mocks: { 1440: "04-review.png" } },
  { name: "sheet-4", role: "engineer", address: sheet(4), mocks: { 1440: "05-compare.png" } },
  {
    name: "sheet-5",
    role: "owner",
    address: sheet(5),
    mocks: { 1440: "06-owner-desktop.png", 390: "06-owner-phone.png" },
  },
  { name: "sheet-6", role: "engineer", address: sheet(6), mocks: { 1440: "07-calc-sheet.png" } },
  { name: "sheet-7", role: "engineer", address: sheet(7), mocks: { 1440: "08b-permit-record.png" } },
  { name: "sheet-7-reader", role: "reader", address: sheet(7) },
  { name: "permit-set", role: "architect", address: ":project/permit-set", mocks: { 1440: "08a-permit-cover.png" } },
  { name: "nowhere", role: "architect", address: "/nowhere", mocks: { 1440: "09b-error.png" } },
  { name: "settings", role: "architect", address: ":project/settings" },
  { name: "survey", role: "engineer", address: ":project/survey" },
  { name: "site", role: "engineer", address: ":project/site" },
  { name: "cost-book", role: "engineer", address: ":project/cost-book" },
  { name: "premium", role: "architect", address: ":project/premium" },
  { name: "alternatives", role: "architect", address: ":project/alternatives" },
  { name: "people", role: "architect", address: ":project/people" },
  { name: "seal", role: "engineer", address: ":project/seal" },
  { name: "verification", role: "engineer", address: "/verification" },
  { name: "help", role: "architect", address: "/help" },
  { name: "notices", role: "architect", address: "/notices" },
  { name: "account", role: "architect", address: "/account" },
];
