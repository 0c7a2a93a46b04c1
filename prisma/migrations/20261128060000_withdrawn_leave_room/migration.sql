-- A set holds six alternatives that stand; those withdrawn keep their place beside them, to 24 in all.
alter table "kept_option" drop constraint "kept_option_place";
alter table "kept_option" add constraint "kept_option_place" check ("place" between 1 and 24);
