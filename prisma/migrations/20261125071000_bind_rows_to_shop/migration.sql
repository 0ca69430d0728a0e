-- One shop never sees another's rows, whatever a query forgets. The service works under the role deckround_app, which
-- every transaction takes on together with the shop's id (app.shop_id, local to the transaction: a session-wide
-- setting would leak through the connection pool). The owner is not bound: migrations, sign-in before the shop is
-- known, and the sweep of lost jobs run as the owner.

do $$
begin
  create role deckround_app nologin;
exception
  when duplicate_object then null; -- roles belong to the whole server; another database made it already
  when unique_violation then null; -- … at this very moment
end
$$;

do $$
begin
  if not pg_has_role(current_user, 'deckround_app', 'member') then
    execute format('grant deckround_app to %I', current_user);
  end if;
end
$$;

grant usage on schema public to deckround_app;

do $$
declare
  name text;
begin
  for name in
    select table_name from information_schema.columns
    where table_schema = 'public' and column_name = 'shop_id'
  loop
    execute format('grant select, insert, update, delete on %I to deckround_app', name);
    execute format('alter table %I enable row level security', name);
    execute format(
      'create policy of_this_shop on %I using (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)
         with check (shop_id = nullif(current_setting(''app.shop_id'', true), '''')::uuid)',
      name
    );
  end loop;
end
$$;

grant select, update on shop to deckround_app;
alter table shop enable row level security;
create policy this_shop on shop using (id = nullif(current_setting('app.shop_id', true), '')::uuid);
