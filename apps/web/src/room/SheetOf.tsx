import type { Role } from "@cornerway/schema";
import { useParams } from "@tanstack/react-router";
import { lazy, Suspense } from "react";
import { Ruled } from "../controls/Ruled.tsx";
import type { SheetNumber } from "../sheet/contract.ts";
import { useRoom } from "./room-context.ts";
import { sheetParts } from "./sheet-parts.ts";

const Scheme = lazy(async () => ({ default: (await sheetParts[1]()).SchemeSheet }));
const Openings = lazy(async () => ({ default: (await sheetParts[2]()).OpeningsSheet }));
const Review = lazy(async () => ({ default: (await sheetParts[3]()).ReviewSheet }));
const Compare = lazy(async () => ({ default: (await sheetParts[4]()).CompareSheet }));
const Status = lazy(async () => ({ default: (await sheetParts[5]()).StatusSheet }));
const Calculations = lazy(async () => ({ default: (await sheetParts[6]()).CalculationsSheet }));
const Record = lazy(async () => ({ default: (await sheetParts[7]()).RecordSheet }));

/** The sheet the address names; without a name, the one this person's role lands on. Each is fetched when turned to. */
export function SheetOf() {
  const { sheet } = useParams({ strict: false });
  const { project } = useRoom();
  const number = sheet === undefined ? landingSheet(project.roles) : Number(sheet);
  return <Suspense fallback={<Ruled label="Fetching the sheet" />}>{sheetNumbered(number)}</Suspense>;
}

function sheetNumbered(number: number) {
  switch (number) {
    case 1:
      return <Scheme />;
    case 3:
      return <Review />;
    case 5:
      return <Status />;
    case 7:
      return <Record />;
    case 4:
      return <Compare />;
    case 6:
      return <Calculations />;
    default:
      return <Openings />;
  }
}

const landings: Readonly<{ [role in Role]: SheetNumber }> = {
  architect: 1,
  engineer: 3,
  checker: 3,
  owner: 5,
  reader: 7,
};

export const landingSheet = (roles: readonly Role[]): SheetNumber => landings[roles[0] ?? "reader"];
