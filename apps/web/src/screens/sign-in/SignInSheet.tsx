import { SignIn } from "@cornerway/schema";
import { zodResolver } from "@hookform/resolvers/zod";
import { useQueryClient } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { lazy, Suspense, useState } from "react";
import { useForm } from "react-hook-form";
import { CautionLine } from "../../controls/CautionLine.tsx";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { changePerson } from "../../data/change-person.ts";
import { signIn } from "../../data/session.ts";
import "./sign-in.css";

/** Who comes to sign in need not wait for the drawing. */
const SignInDrawing = lazy(async () => ({ default: (await import("./SignInDrawing.tsx")).SignInDrawing }));

/** Who stands at the sheet: address and password. */
export function SignInSheet() {
  const client = useQueryClient();
  const [refused, setRefused] = useState<string | null>(null);
  const { register, handleSubmit, formState } = useForm<SignIn>({
    resolver: zodResolver(SignIn),
    defaultValues: { email: "", password: "" },
  });
  const enter = handleSubmit(async (words) => {
    setRefused(null);
    try {
      changePerson(client, await signIn(words));
    } catch (error) {
      setRefused(error instanceof Error ? error.message : "The sign-in did not go through.");
    }
  });
  const { email, password } = formState.errors;
  return (
    <main className="sign-in">
      <div className="sign-in-sheet">
        <div className="sign-in-place">
          <Suspense fallback={null}>
            <SignInDrawing />
          </Suspense>
        </div>
        <form className="sign-in-form" onSubmit={(event) => void enter(event)} noValidate>
          <h1>Cornerway</h1>
          <p>One scheme of containers, and what each move does to the load.</p>
          <PersonField label="Address" fault={email && "An address, such as name@office.example."}>
            {(bound) => <input {...bound} {...register("email")} type="email" autoComplete="username" />}
          </PersonField>
          <PersonField label="Password" fault={password && "The password is missing."}>
            {(bound) => <input {...bound} {...register("password")} type="password" autoComplete="current-password" />}
          </PersonField>
          {refused === null ? null : (
            <p className="field-fault" role="alert">
              {refused}
            </p>
          )}
          <Command next type="submit" onPress={() => undefined}>
            {formState.isSubmitting ? "Opening the desk" : "Open the desk"}
          </Command>
          <Link className="command command-quiet" to="/forgotten">
            The password is forgotten
          </Link>
          <CautionLine />
        </form>
      </div>
    </main>
  );
}
