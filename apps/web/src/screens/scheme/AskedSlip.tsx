import { useNavigate } from "@tanstack/react-router";
import { Command } from "../../controls/Command.tsx";
import { useThread } from "../../data/thread.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { Slip } from "../../sheet/Slip.tsx";

/** While one draws: a change was asked for on the review sheet and waits for the architect. */
export function AskedSlip() {
  const { project } = useRoom();
  const navigate = useNavigate();
  const thread = useThread(project.id).data;
  const open = (thread?.requests ?? []).filter(
    ({ state, revision }) => state === "open" && revision === project.revision,
  );
  if (open.length === 0 || whyNot(project, "answer-request") !== undefined) return null;
  return (
    <Slip label={open.length === 1 ? "A change is asked for" : `${open.length} changes are asked for`} hand="engineer">
      {open.map(({ id, text }) => (
        <p key={id} className="said-by-person hand-engineer">
          {text}
        </p>
      ))}
      <Command
        onPress={() =>
          void navigate({ to: "/projects/$projectId/sheet/$sheet", params: { projectId: project.id, sheet: "3" } })
        }
      >
        Answer on sheet 3
      </Command>
    </Slip>
  );
}
