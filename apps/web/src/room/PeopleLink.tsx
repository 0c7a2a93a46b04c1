import { useNavigate } from "@tanstack/react-router";
import { Command } from "../controls/Command.tsx";
import { useRoom } from "./room-context.ts";

/** From the sheets to who has a part in them, and to what holds for the whole project. */
export function PeopleLink() {
  const { project } = useRoom();
  const navigate = useNavigate();
  const params = { projectId: project.id };
  return (
    <>
      <Command quiet onPress={() => void navigate({ to: "/projects/$projectId/people", params })}>
        People
      </Command>
      <Command quiet onPress={() => void navigate({ to: "/projects/$projectId/settings", params })}>
        Site, units
      </Command>
      <Command quiet onPress={() => void navigate({ to: "/help" })}>
        Words
      </Command>
    </>
  );
}
