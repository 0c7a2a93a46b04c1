import { Link } from "@tanstack/react-router";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useAccount } from "../../data/account.ts";
import { PageSheet } from "../../sheet/PageSheet.tsx";
import { LicenceForm } from "./LicenceForm.tsx";
import { NoticeForm } from "./NoticeForm.tsx";
import { NameForm } from "./NameForm.tsx";
import { PasswordForm } from "./PasswordForm.tsx";
import { SignedInPlaces } from "./SignedInPlaces.tsx";
import { StampWordingForm } from "./StampWordingForm.tsx";
import { TokensSection } from "./TokensSection.tsx";
import "./account.css";

/** What belongs to one person: name, licence, password, and where they are signed in. */
export function AccountPage() {
  const account = useAccount();
  if (account.isPending) return <Ruled label="Fetching your account" />;
  if (account.isError && account.data === undefined)
    return <Trouble error={account.error} again={() => void account.refetch()} />;
  const { person, licence, administrator, stampWording } = account.data;
  return (
    <PageSheet
      title="Your account"
      caption={administrator ? `${person.email} · administrator of the service` : person.email}
      heading={person.name}
      way={
        <Link className="command" to="/">
          To the desk
        </Link>
      }
    >
      <div className="page-columns">
        <NameForm key={person.name} name={person.name} />
        <PasswordForm person={person} />
        <LicenceForm key={licence?.number ?? "none"} licence={licence} />
        <NoticeForm />
        <StampWordingForm key={JSON.stringify(stampWording)} wording={stampWording} />
      </div>
      <SignedInPlaces />
      <TokensSection />
    </PageSheet>
  );
}
