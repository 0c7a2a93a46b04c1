-- People come by themselves, by a link that was made for them; what they state of their licence is theirs.
alter table "person" add column "administrator" boolean not null default false;
alter table "person" add column "licence_number" text;
alter table "person" add column "licence_jurisdiction" text;
alter table "person" add constraint "person_licence" check (("licence_number" is null) = ("licence_jurisdiction" is null));

-- A session is told apart by `handle`, which opens nothing, and ends when nothing was heard of it for a while.
alter table "session" add column "handle" uuid not null default gen_random_uuid();
alter table "session" add column "seen_at" timestamptz(3) not null default current_timestamp;
alter table "session" add column "agent" text not null default 'unknown';
alter table "session" add column "network" text not null default 'unknown';
create unique index "session_handle_key" on "session" ("handle");

-- A part has a beginning; an engineer acts once confirmed; a reader's part ends. Parts given before this were given by the owner.
alter table "membership" add column "since" timestamptz(3) not null default current_timestamp;
alter table "membership" add column "confirmed_at" timestamptz(3);
alter table "membership" add column "expires_at" timestamptz(3);
update "membership" m set "since" = p."opened_at" from "project" p where p."id" = m."project_id";
update "membership" set "confirmed_at" = "since" where "role" = 'engineer';
update "membership" set "expires_at" = current_timestamp + interval '90 days' where "role" = 'reader';
alter table "membership" add constraint "membership_confirmed" check ("confirmed_at" is null or "role" = 'engineer');
alter table "membership" add constraint "membership_expires" check (("expires_at" is not null) = ("role" = 'reader'));
create index "membership_expires_at_idx" on "membership" ("expires_at");

-- Links that work once. Neither the secret in the address nor the ticket in the cookie is kept, only their SHA-256.
create table "one_time_link" (
  "id" uuid not null,
  "kind" text not null,
  "secret_hash" text not null,
  "email" text,
  "person_id" uuid,
  "project_id" uuid,
  "role" text,
  "part_ends_at" timestamptz(3),
  "made_by" jsonb,
  "made_at" timestamptz(3) not null default current_timestamp,
  "expires_at" timestamptz(3) not null,
  "ticket_hash" text,
  "ticket_expires_at" timestamptz(3),
  "closed_at" timestamptz(3),
  constraint "one_time_link_pkey" primary key ("id"),
  constraint "one_time_link_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action,
  constraint "one_time_link_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete cascade on update no action,
  constraint "one_time_link_email_lower" check ("email" = lower("email")),
  constraint "one_time_link_role" check ("role" in ('architect', 'engineer', 'checker', 'owner', 'reader')),
  constraint "one_time_link_whole" check (case "kind"
    when 'invitation' then "email" is not null and "project_id" is not null and "role" is not null and "made_by" is not null
      and ("part_ends_at" is not null) = ("role" = 'reader')
    when 'new-password' then "person_id" is not null and "project_id" is null and "role" is null
    when 'first-administrator' then "email" is null and "person_id" is null and "project_id" is null and "role" is null
    else false end)
);
create unique index "one_time_link_secret_hash_key" on "one_time_link" ("secret_hash");
create unique index "one_time_link_ticket_hash_key" on "one_time_link" ("ticket_hash");
create index "one_time_link_project_id_idx" on "one_time_link" ("project_id");
create index "one_time_link_person_id_idx" on "one_time_link" ("person_id");

-- One person never judges a drawing they make: neither beside it nor after having acted in another such role.
create or replace function "membership_excludes"() returns trigger language plpgsql as $$
begin
  if new."role" in ('architect', 'engineer', 'checker') and (exists (
    select 1 from "membership" m where m."project_id" = new."project_id" and m."person_id" = new."person_id"
      and m."role" in ('architect', 'engineer', 'checker') and m."role" <> new."role"
  ) or exists (
    select 1 from "record_entry" e where e."project_id" = new."project_id" and e."actor_id" = new."person_id"
      and e."actor_role" in ('architect', 'engineer', 'checker') and e."actor_role" <> new."role"
      and e."kind" <> 'role given'
  )) then
    raise exception 'one person cannot be % beside another drawing or judging role', new."role" using errcode = 'CW003';
  end if;
  return new;
end
$$;

-- Whoever comes first, where nobody is, administers the service. The service's role cannot make anyone else an administrator.
create function "become_first_administrator"("who" uuid) returns boolean
  language plpgsql security definer set search_path = pg_catalog, public as $$
begin
  lock table "person" in share row exclusive mode;
  if (select count(*) from "person") <> 1 then
    return false;
  end if;
  update "person" set "administrator" = true where "id" = "who";
  return found;
end
$$;
revoke execute on function "become_first_administrator"(uuid) from public;
grant execute on function "become_first_administrator"(uuid) to cornerway_service;

grant insert ("id", "name", "email", "password_hash", "created_at") on "person" to cornerway_service;
grant update ("name", "password_hash", "licence_number", "licence_jurisdiction") on "person" to cornerway_service;
grant update ("seen_at") on "session" to cornerway_service;
grant insert on "project", "draft" to cornerway_service;
grant insert, delete on "membership" to cornerway_service;
grant update ("confirmed_at", "expires_at") on "membership" to cornerway_service;
grant select, insert on "one_time_link" to cornerway_service;
grant update ("ticket_hash", "ticket_expires_at", "closed_at") on "one_time_link" to cornerway_service;
