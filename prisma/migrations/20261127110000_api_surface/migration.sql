-- Access tokens for scripts. Only SHA-256 of the secret is kept, and the part of it that may be shown.
create table "access_token" (
  "id" uuid not null,
  "person_id" uuid not null,
  "name" text not null,
  "prefix" text not null,
  "secret_hash" text not null,
  "scopes" text[],
  "made_at" timestamptz(3) not null default current_timestamp,
  "expires_at" timestamptz(3) not null,
  "last_used_at" timestamptz(3),
  "revoked_at" timestamptz(3),
  constraint "access_token_pkey" primary key ("id"),
  constraint "access_token_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete cascade on update no action,
  constraint "access_token_within_a_year" check ("expires_at" <= "made_at" + interval '366 days')
);
create unique index "access_token_secret_hash_key" on "access_token" ("secret_hash");
create index "access_token_person_id_idx" on "access_token" ("person_id");

-- What was answered under an Idempotency-Key, for as long as it may be asked again.
create table "repeatable_answer" (
  "person_id" uuid not null,
  "way" text not null,
  "key" text not null,
  "body_digest" text not null,
  "answer" jsonb not null,
  "expires_at" timestamptz(3) not null,
  constraint "repeatable_answer_pkey" primary key ("person_id", "way", "key"),
  constraint "repeatable_answer_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete cascade on update no action
);
create index "repeatable_answer_expires_at_idx" on "repeatable_answer" ("expires_at");

-- Addresses that are told of a project's record. The secret is sealed with the service's key, which is not in the database.
create table "webhook" (
  "id" uuid not null,
  "project_id" uuid not null,
  "person_id" uuid not null,
  "url" text not null,
  "sealed_secret" text not null,
  "made_at" timestamptz(3) not null default current_timestamp,
  "failures" integer not null default 0,
  "stopped_at" timestamptz(3),
  "stopped_because" text,
  constraint "webhook_pkey" primary key ("id"),
  constraint "webhook_project_id_fkey" foreign key ("project_id") references "project" ("id") on delete no action on update no action,
  constraint "webhook_person_id_fkey" foreign key ("person_id") references "person" ("id") on delete no action on update no action,
  constraint "webhook_stopped" check (("stopped_at" is null) = ("stopped_because" is null))
);
create index "webhook_project_id_idx" on "webhook" ("project_id");

-- Each try to tell one of them one entry.
create table "webhook_delivery" (
  "id" uuid not null,
  "webhook_id" uuid not null,
  "entry" integer not null,
  "attempt" integer not null,
  "at" timestamptz(3) not null default clock_timestamp(),
  "status" integer,
  "error" text,
  "ms" integer not null,
  constraint "webhook_delivery_pkey" primary key ("id"),
  constraint "webhook_delivery_webhook_id_fkey" foreign key ("webhook_id") references "webhook" ("id") on delete cascade on update no action,
  constraint "webhook_delivery_told" check ("status" is not null or "error" is not null)
);
create index "webhook_delivery_webhook_id_at_idx" on "webhook_delivery" ("webhook_id", "at");

-- The visible part of the access token that acted; null when it was done by hand. Part of what the payload's digest covers.
alter table "record_payload" add column "actor_token" text;

grant select, insert on "access_token" to cornerway_service;
grant update ("last_used_at", "revoked_at") on "access_token" to cornerway_service;
grant select, insert, delete on "repeatable_answer" to cornerway_service;
grant select, insert, delete on "webhook" to cornerway_service;
grant update ("failures", "stopped_at", "stopped_because") on "webhook" to cornerway_service;
grant select, insert, delete on "webhook_delivery" to cornerway_service;
