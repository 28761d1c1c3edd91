-- From here on a bare number is in the unit that its quantity is spoken of in: minutes for a job and
-- a wait, metres or feet for tape, millimetres for a fluid tip. What was written down before meant
-- seconds, millimetres or inches, and was shown so; the unit is added to it, so that it still does.
-- Of a bare number nothing but space is left when its figures and signs are made spaces.
update attempt_reading set typed = typed || ' s'
  where (cell = 'work-time' or cell like 'flash.c%')
    and typed <> '' and trim(translate(typed, '0123456789.,/+-−½¼¾⅓⅔⅛⅜⅝⅞', '                         ')) = '';

update attempt_reading set typed = typed || ' mm'
  where cell = 'tape-used'
    and typed <> '' and trim(translate(typed, '0123456789.,/+-−½¼¾⅓⅔⅛⅜⅝⅞', '                         ')) = ''
    and attempt_id in (select id from attempt where units = 'METRIC');

update attempt_reading set typed = typed || ' in'
  where (cell = 'tape-used' or cell = 'tip-size')
    and typed <> '' and trim(translate(typed, '0123456789.,/+-−½¼¾⅓⅔⅛⅜⅝⅞', '                         ')) = ''
    and attempt_id in (select id from attempt where units = 'US');
