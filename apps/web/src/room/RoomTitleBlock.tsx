import type { Verdict } from "@cornerway/schema";
import { useNavigate } from "@tanstack/react-router";
import { useState } from "react";
import { dateOf } from "../controls/calendar.ts";
import { TitleBlock } from "../sheet/TitleBlock.tsx";
import type { SheetNumber } from "../sheet/contract.ts";
import { useRoom } from "./room-context.ts";

/** The title block of this project's sheets, with the row of seven as the way from one to the next. */
export function RoomTitleBlock(props: {
  sheet: SheetNumber;
  scale: string;
  revision: string | null;
  verdict: Verdict;
  verdictLine?: string | undefined;
  remark?: string | undefined;
}) {
  const { project } = useRoom();
  const navigate = useNavigate();
  const [openedAt] = useState(() => Date.now());
  return (
    <>
      <title>{`${project.name}, sheet ${props.sheet} · Cornerway`}</title>
      <TitleBlock
        {...props}
        projectName={project.name}
        subtitle={`${project.client} · ${project.place}`}
        date={dateOf(project.since ?? openedAt)}
        onSheet={(sheet) =>
          void navigate({
            to: "/projects/$projectId/sheet/$sheet",
            params: { projectId: project.id, sheet: String(sheet) },
          })
        }
        onProject={() => void navigate({ to: "/" })}
      />
    </>
  );
}
