import type { Operation, Scheme } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { Slip } from "../sheet/Slip.tsx";
import { setPost } from "../tools/set-post.ts";
import { QuantityForm } from "./QuantityForm.tsx";
import type { QuantityField } from "./quantity-field.ts";

/** The typed twin of setting a post: where it stands; it runs from the unit above down to a pad of its own. */
export function NewPostSlip({
  scheme,
  unitId,
  onDraw,
}: {
  scheme: Scheme;
  unitId: string | null;
  onDraw: (operations: Operation[]) => void;
}) {
  const [none, setNone] = useState(false);
  const unit = scheme.containers.find(({ id }) => id === unitId);
  const xUm = unit?.xUm ?? 0;
  const yUm = unit?.yUm ?? 0;
  const fields = useMemo<QuantityField[]>(
    () => [
      { name: "xUm", label: "East", kind: "length", value: xUm },
      { name: "yUm", label: "North", kind: "length", value: yUm },
    ],
    [xUm, yUm],
  );
  return (
    <Slip label={unit === undefined ? "A post" : `A post under ${unit.tag}`}>
      <QuantityForm
        fields={fields}
        command="Set the post there"
        onValues={(values) => {
          const at = { xMm: (values["xUm"] ?? 0) / 1000, yMm: (values["yUm"] ?? 0) / 1000 };
          const raised = unit !== undefined && unit.zUm > scheme.site.groundZUm ? unit.id : undefined;
          const operations = setPost(scheme, at, raised);
          setNone(operations === null);
          if (operations !== null) onDraw(operations);
        }}
      />
      {none ? (
        <p className="field-fault" role="alert">
          There is no unit above this place for a post to hold.
        </p>
      ) : null}
    </Slip>
  );
}
