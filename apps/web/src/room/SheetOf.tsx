import type { Role } from "@cornerway/schema";
import { useParams } from "@tanstack/react-router";
import type { SheetNumber } from "../sheet/contract.ts";
import { AsleepSheet } from "../screens/asleep/AsleepSheet.tsx";
import { RecordSheet } from "../screens/record/RecordSheet.tsx";
import { ReviewSheet } from "../screens/review/ReviewSheet.tsx";
import { SchemeSheet } from "../screens/scheme/SchemeSheet.tsx";
import { StatusSheet } from "../screens/status/StatusSheet.tsx";
import { useRoom } from "./room-context.ts";

/** The sheet the address names; without a name, the one this person's role lands on. */
export function SheetOf() {
  const { sheet } = useParams({ strict: false });
  const { project } = useRoom();
  const number = sheet === undefined ? landingSheet(project.roles) : Number(sheet);
  switch (number) {
    case 1:
      return <SchemeSheet />;
    case 3:
      return <ReviewSheet />;
    case 5:
      return <StatusSheet />;
    case 7:
      return <RecordSheet />;
    case 4:
      return <AsleepSheet sheet={4} />;
    case 6:
      return <AsleepSheet sheet={6} />;
    default:
      return <AsleepSheet sheet={2} />;
  }
}

const landings: Record<Role, SheetNumber> = { architect: 1, engineer: 3, checker: 3, owner: 5, reader: 7 };

export const landingSheet = (roles: readonly Role[]): SheetNumber => landings[roles[0] ?? "reader"];
