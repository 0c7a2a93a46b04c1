import { Command } from "../controls/Command.tsx";
import { Key } from "../sheet/Key.tsx";
import { HerePeople } from "./HerePeople.tsx";
import { PeopleLink } from "./PeopleLink.tsx";
import "./margin-foot.css";

/** The foot of the notes margin: who else is here, the way to the keys, and the key of the drawing. */
export const MarginFoot = ({ pxPerM, onKeys }: { pxPerM: number; onKeys: () => void }) => (
  <>
    <div className="margin-foot">
      <HerePeople />
      <PeopleLink />
      <Command quiet shortcut="?" onPress={onKeys}>
        Keys
      </Command>
    </div>
    <Key pxPerM={pxPerM} />
  </>
);
