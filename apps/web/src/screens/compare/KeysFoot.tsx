import { Command } from "../../controls/Command.tsx";
import { HerePeople } from "../../room/HerePeople.tsx";
import { PeopleLink } from "../../room/PeopleLink.tsx";

/** The foot of the margin: who else is here, the changes as a table, and the keys. */
export const KeysFoot = ({ onTable, onKeys }: { onTable: () => void; onKeys: () => void }) => (
  <div className="compare-foot">
    <HerePeople />
    <PeopleLink />
    <Command quiet shortcut="L" onPress={onTable}>
      As a table
    </Command>
    <Command quiet shortcut="?" onPress={onKeys}>
      Keys
    </Command>
  </div>
);
