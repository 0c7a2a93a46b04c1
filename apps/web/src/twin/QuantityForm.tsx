import { zodResolver } from "@hookform/resolvers/zod";
import { useMemo } from "react";
import type { ReactNode } from "react";
import { useForm } from "react-hook-form";
import { Command } from "../controls/Command.tsx";
import { PersonField } from "../controls/PersonField.tsx";
import { unitOf } from "../units/quantity.ts";
import { useUnits } from "../units/use-units.ts";
import { quantitySchema, writeQuantity } from "./quantity-field.ts";
import type { QuantityField } from "./quantity-field.ts";
import "./twin.css";

export interface QuantityFormProps {
  fields: readonly QuantityField[];
  /** What pressing it puts on the drawing: "Move F1". */
  command: string;
  asleepBecause?: string | undefined;
  onValues: (values: Record<string, number>) => void;
  /** Told what stands typed, at each stroke; null where it makes no sense or is drawn. */
  onTyping?: (values: Record<string, number> | null) => void;
  children?: ReactNode;
}

/** The typed twin of a drag: fields with units; Enter draws them. */
export function QuantityForm({ fields, command, asleepBecause, onValues, onTyping, children }: QuantityFormProps) {
  const units = useUnits();
  const shape = useMemo(() => quantitySchema(fields, units), [fields, units]);
  const values = useMemo(
    () => Object.fromEntries(fields.map((field) => [field.name, writeQuantity(field, units)])),
    [fields, units],
  );
  const form = useForm<Record<string, string>, unknown, Record<string, number>>({
    resolver: zodResolver(shape),
    values,
  });
  const { errors } = form.formState;
  // What was typed gives way to what it came to, which may be written otherwise or be what stood there.
  const enter = form.handleSubmit((typed) => {
    onTyping?.(null);
    onValues(typed);
    form.reset();
  });
  const tell = () => {
    const read = shape.safeParse(form.getValues());
    onTyping?.(read.success ? read.data : null);
  };
  return (
    <form
      className="twin"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (asleepBecause === undefined) void enter(event);
      }}
    >
      <div className="twin-fields">
        {fields.map(({ name, label, kind }) => (
          <PersonField key={name} label={`${label}, ${unitOf(kind, units)}`} fault={errors[name]?.message}>
            {(bound) => (
              <input
                {...bound}
                {...form.register(name, { onChange: tell })}
                inputMode="decimal"
                autoComplete="off"
                readOnly={asleepBecause !== undefined}
              />
            )}
          </PersonField>
        ))}
      </div>
      {children}
      <Command type="submit" onPress={() => undefined} asleepBecause={asleepBecause}>
        {command}
      </Command>
    </form>
  );
}
