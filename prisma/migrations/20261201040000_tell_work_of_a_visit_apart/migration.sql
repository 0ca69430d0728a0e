-- A machine can have several calls in one visit, and whatever was found there on the spot besides, of planned kinds too.
alter table visit_item drop constraint visit_item_visit_id_machine_id_code_slot_stopgap_id_key;
create unique index visit_item_work_key
  on visit_item (visit_id, machine_id, code, slot, stopgap_id, road_call_id) nulls not distinct
  where role <> 'found';
