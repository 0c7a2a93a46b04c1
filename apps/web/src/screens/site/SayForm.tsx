import { refuseSiteWord, siteActs, type Photo, type SiteItemNow, type SiteWord } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { WordsField } from "../../controls/WordsField.tsx";
import { useSaySiteWord } from "../../data/site.ts";
import { PhotoField } from "../../photos/PhotoField.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

const commands = {
  built: "It stands as drawn",
  differs: "It stands otherwise",
  missing: "It is not there",
  accepted: "It may stay as it is",
  "to mend": "Have it made as drawn",
  reopened: "Open it again",
} as const;
const sayings = ["built", "differs", "missing", "accepted", "to mend", "reopened"] as const;

/** What this person may say of an item now: with photos what was seen, in words what is otherwise. */
export function SayForm({ now, revision, name }: { now: SiteItemNow; revision: string; name: string }) {
  const { project, me, say } = useRoom();
  const tell = useSaySiteWord(project.id);
  const [text, setText] = useState("");
  const [photos, setPhotos] = useState<readonly Photo[]>([]);
  const open = sayings.filter(
    (says) =>
      whyNot(project, siteActs[says]) === undefined &&
      project.roles.some((role) => refuseSiteWord(now.item.kind, lastOf(now), says, { id: me.id, role }) === undefined),
  );
  if (open.length === 0) return null;
  const words = text.trim();
  const about = { id: newUuid(), revision, key: now.item.key };
  const send = (says: SiteWord["says"]) =>
    tell.mutate(sayingOf(says, about, { words, photos: [...photos] }), {
      onSuccess: () => {
        setText("");
        setPhotos([]);
        say(`${name}: ${commands[says].toLowerCase()}.`);
      },
    });
  const asleep = (says: SiteWord["says"]): string | undefined => {
    if ((says === "built" || says === "differs") && photos.length === 0) return "Take a photo first.";
    return says !== "built" && words === "" ? "Write it first." : undefined;
  };
  const sees = open.some((says) => says === "built" || says === "differs");
  return (
    <div className="matter-acts site-say">
      {sees ? <PhotoField label={`Photo of ${name}`} photos={photos} onPhotos={setPhotos} /> : null}
      <WordsField label="In words" text={text} onText={setText} />
      <div className="twin-row">
        {open.map((says) => (
          <Command key={says} next={says === "built"} onPress={() => send(says)} asleepBecause={asleep(says)}>
            {commands[says]}
          </Command>
        ))}
      </div>
      <Refused error={tell.error} />
    </div>
  );
}

/** What was last said of it as it is drawn now. */
const lastOf = ({ words, drawnOtherwise }: SiteItemNow): SiteWord | undefined =>
  drawnOtherwise ? undefined : words.at(-1);

function sayingOf(
  says: SiteWord["says"],
  about: { id: string; revision: string; key: string },
  { words, photos }: { words: string; photos: Photo[] },
) {
  if (says === "built") return { seen: { says, ...about, photos, text: words === "" ? null : words } };
  if (says === "differs" || says === "missing") return { seen: { says, ...about, photos, text: words } };
  return { judged: { says, ...about, text: words } };
}
