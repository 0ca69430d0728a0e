-- A wish for another day ends with its visit, and says how: the visit was made where it stood, or nobody comes any more.
-- Planning again gives a site a new row for the same trip, which takes the wish over.

alter table visit_answer drop constraint visit_answer_state_check;
alter table visit_answer add constraint visit_answer_state_check
  check (state in ('noted', 'open', 'met', 'declined', 'withdrawn', 'made', 'given-up'));

create or replace function meet_wishes() returns trigger language plpgsql as $$
begin
  if tg_op = 'INSERT' then
    update visit_answer a
      set visit_id = new.id, version = a.version + 1,
        (state, replied_at) = (
          select case when is_met then 'met' else 'open' end, case when is_met then a.replied_at end
          from (select new.visit_date <> a.about_date and (a.days = '{}' or new.visit_date = any (a.days)) as is_met) of_day)
      where a.shop_id = new.shop_id and a.site_id = new.site_id and a.visit_id is null and a.state = 'given-up'
        and a.xmin = pg_current_xact_id()::xid;
    return null;
  elsif tg_op = 'DELETE' then
    update visit_answer a
      set state = 'given-up', replied_at = now(), version = a.version + 1
      where a.shop_id = old.shop_id and a.visit_id = old.id and a.state = 'open';
    return old;
  end if;
  update visit_answer a
    set version = a.version + 1,
      (state, replied_at) = (
        case
          when new.visit_date <> a.about_date and (a.days = '{}' or new.visit_date = any (a.days)) then 'met'
          when new.state = 'done' then 'made'
          else 'given-up'
        end, coalesce(new.finished_at, now()))
    where a.shop_id = old.shop_id and a.visit_id = old.id and a.state = 'open'
      and (new.state in ('done', 'cancelled')
           or (new.visit_date <> a.about_date and (a.days = '{}' or new.visit_date = any (a.days))));
  return new;
end $$;
create trigger take_over_wishes after insert on visit for each row execute function meet_wishes();

update visit_answer a
  set state = case v.state when 'done' then 'made' else 'given-up' end,
    replied_at = coalesce(v.finished_at, a.replied_at, now()), version = a.version + 1
  from visit v
  where v.shop_id = a.shop_id and v.id = a.visit_id
    and ((v.state in ('done', 'cancelled') and a.state = 'open')
         or (v.state = 'cancelled' and a.state = 'met' and a.replied_by is null and v.visit_date = a.about_date));
