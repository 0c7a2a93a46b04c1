-- Keys that sign heads of records, for the whole service: added one after another, never altered, never taken away.
-- The private part is sealed under a key that is not in the database.
create table "record_key" (
  "place" integer not null,
  "fingerprint" text not null,
  "public_key" text not null,
  "since" timestamptz(3) not null,
  "follows" jsonb,
  "sealed" text not null,
  constraint "record_key_pkey" primary key ("place")
);
create unique index "record_key_fingerprint_key" on "record_key" ("fingerprint");

grant select, insert on "record_key" to cornerway_service;
