import { Command } from "../controls/Command.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { namesIn } from "../wording/name-of.ts";
import type { CheckSource } from "./check-source.ts";
import { ownChecks, usedText } from "./own-checks.ts";
import "./checks.css";

/** The governing check of the chosen thing, and the way to its working. */
export function ChosenCheck({
  source,
  chosenId,
  onOpen,
}: {
  source: CheckSource | null;
  chosenId: string | null;
  onOpen: () => void;
}) {
  if (source?.report == null || chosenId === null) return null;
  const [worst, ...others] = ownChecks(source.report, source.scheme, chosenId);
  if (worst === undefined) return null;
  return (
    <Slip label={`Governing check of ${namesIn(source.scheme)(worst.ownerId)}`}>
      <p className="chosen-check">
        {worst.part} {worst.place}: {worst.check}, <b>{usedText(worst)}</b> of its strength. Screening.
      </p>
      <Command shortcut="Enter" onPress={onOpen}>
        {others.length === 0 ? "Open its working" : `Open its working, and ${others.length} more`}
      </Command>
    </Slip>
  );
}
