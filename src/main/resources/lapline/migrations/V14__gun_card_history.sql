-- A card that was corrected is followed by another, which knows the one before; and who put it away.
alter table gun_card add column follows uuid references gun_card (id);
alter table gun_card add column retired_by uuid references person (id);
