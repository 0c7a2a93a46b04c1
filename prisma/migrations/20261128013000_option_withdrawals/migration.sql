-- An alternative taken back by whoever kept it: it stands beside the others as withdrawn, and is picked no more.
create table "option_withdrawal" (
  "project_id" uuid not null,
  "id" uuid not null,
  "option_id" uuid not null,
  "reason" text,
  "author" jsonb not null,
  "withdrawn_at" timestamptz(3) not null,
  "body_digest" text not null,
  constraint "option_withdrawal_pkey" primary key ("project_id", "id"),
  constraint "option_withdrawal_project_id_option_id_fkey" foreign key ("project_id", "option_id") references "kept_option" ("project_id", "id") on delete no action on update no action
);
create unique index "option_withdrawal_project_id_option_id_key" on "option_withdrawal" ("project_id", "option_id");

create trigger "option_withdrawal_kept" before update or delete on "option_withdrawal" for each row execute function "refuse_alteration"();
create trigger "option_withdrawal_whole" before truncate on "option_withdrawal" for each statement execute function "refuse_alteration"();
grant select, insert on "option_withdrawal" to cornerway_service;
