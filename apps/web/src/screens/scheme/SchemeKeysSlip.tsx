import { KeysSlip } from "../../room/KeysSlip.tsx";
import { schemeKeyLines } from "./scheme-key-lines.ts";

export const SchemeKeysSlip = ({ onClose }: { onClose: () => void }) => (
  <KeysSlip lines={schemeKeyLines} onClose={onClose} />
);
