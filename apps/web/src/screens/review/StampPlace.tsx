import { elementById, may, type Revision } from "@cornerway/schema";
import { lazy, Suspense, useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { dateOf } from "../../controls/calendar.ts";
import { useStamps } from "../../data/stamp.ts";
import { useRoom } from "../../room/room-context.ts";
import { namesIn } from "../../wording/name-of.ts";
import "./review.css";

/** The stamp is laid on once the drawing stands. */
const ReviewStamp = lazy(async () => ({ default: (await import("../../sheet/ReviewStamp.tsx")).ReviewStamp }));
/** Fetched when it is taken in hand. */
const StampInHand = lazy(async () => ({ default: (await import("./stamps/StampInHand.tsx")).StampInHand }));

export interface StampPlaceProps {
  revision: Revision;
  current: boolean;
  signer: string;
  /** What is chosen on the drawing: an item that can be stamped by itself. */
  chosenId: string | null;
  onCannot: (why: string) => void;
}

/** Where the stamp stands: live for the engineer, an impression once pressed, bare for everyone else. */
export function StampPlace({ revision, current, signer, chosenId, onCannot }: StampPlaceProps) {
  const { project } = useRoom();
  const stamps = useStamps(project.id).data ?? [];
  /** Null while none is in hand; otherwise what it will be on. */
  const [inHand, take] = useState<{ elementId: string | null } | null>(null);
  const { stamp, letter, resultDigest, scheme } = revision;
  if (stamp !== null)
    return (
      <aside className="stamp-place" aria-label="Stamp">
        <Suspense fallback={null}>
          <ReviewStamp
            state="pressed"
            disposition={stamp.disposition}
            wording={stamp.wording}
            revision={letter}
            date={dateOf(stamp.pressedAt)}
            signer={stamp.author.name}
            text={stamp.text}
          />
        </Suspense>
      </aside>
    );
  if (!current || !may(project.roles, "press-stamp")) return null;
  if (inHand !== null)
    return (
      <aside className="stamp-place stamp-in-hand" aria-label="Stamp">
        <Suspense fallback={null}>
          <StampInHand
            revision={revision}
            elementId={inHand.elementId}
            signer={signer}
            onCannot={onCannot}
            onAside={() => take(null)}
          />
        </Suspense>
      </aside>
    );
  const because = resultDigest === null ? "Not checked yet." : undefined;
  const item = chosenId !== null && elementById(scheme, chosenId) !== undefined ? chosenId : null;
  const stamped = stamps.some((each) => each.stamp.revision === letter && each.stamp.elementId === item);
  return (
    <aside className="stamp-place" aria-label="Stamp">
      {item === null ? null : (
        <Command
          onPress={() => take({ elementId: item })}
          asleepBecause={because ?? (stamped ? "It is stamped already." : undefined)}
        >
          {`Stamp ${namesIn(scheme)(item)} alone`}
        </Command>
      )}
      <Command engineer onPress={() => take({ elementId: null })} asleepBecause={because}>
        {`Stamp revision ${letter}`}
      </Command>
    </aside>
  );
}
