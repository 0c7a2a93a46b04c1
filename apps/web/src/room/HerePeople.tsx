import { useSyncExternalStore } from "react";
import { sheets } from "../sheet/contract.ts";
import { useRoom } from "./room-context.ts";

/** Who else has this project open, and which sheet; no faces, no dots, nothing while one is alone. */
export function HerePeople() {
  const { here } = useRoom();
  const everyHand = useSyncExternalStore(here.listen, here.now);
  const others = [...new Map(everyHand.map((person) => [person.personId, person])).values()];
  if (others.length === 0) return null;
  const whole = others.map(({ name }) => name).join(", ");
  return (
    <span className="here-people" title={`Also here: ${whole}`}>
      Also here:{" "}
      {others.map(({ personId, name, role, presence }, at) => (
        <span key={personId} className={`hand-${role}`}>
          {at > 0 ? ", " : ""}
          {name}
          {presence === null ? "" : ` on ${sheets.find(({ number }) => number === presence.sheet)?.name ?? "a sheet"}`}
        </span>
      ))}
    </span>
  );
}
