/*
 * The record of a panel keeps itself: what is typed goes to the server in small groups, what cannot
 * be sent stays on this device and in sight until it is. Without this script the form still works.
 */
(function () {
  'use strict';
  const form = document.getElementById('entry');
  if (!form) return;
  const says = document.getElementById('sayings').dataset;
  const saved = document.getElementById('saved');
  const trouble = document.getElementById('trouble');
  const fields = Array.from(form.querySelectorAll('[data-cell]'));
  const byCell = new Map(fields.map(f => [f.dataset.cell, f]));
  const shelf = 'lapline.unsent.' + form.dataset.attempt;
  const WAIT = 600;
  /* Characters that one field takes, and that one block may have. */
  const LONGEST = 200;
  const MOST_PASTED = 10000;
  const unsent = new Map();
  const clashes = new Map();
  const kept = new Map(fields.map(f => [f.dataset.cell, f.value.trim()]));
  let since = Number(form.dataset.revision);
  let timer = 0;
  let sending = null;
  let pause = 0;
  /* The drawing beside the field that is being written. */
  let read = null;

  function say(text, ...values) {
    return text.replace(/\{(\d)\}/g, (m, i) => values[i]);
  }

  function count(number) {
    return number.toLocaleString(document.documentElement.lang);
  }

  // --- what is typed ---------------------------------------------------------------------------

  function typed(field) {
    const cell = field.dataset.cell;
    const clashing = clashes.has(cell);
    if (!clashing && !unsent.has(cell) && kept.get(cell) === field.value.trim()) return;
    clearClash(cell);
    unsent.set(cell, { typed: field.value.trim(), base: Number(field.dataset.revision) });
    mark(field);
    keepOnShelf();
    clearTimeout(timer);
    timer = setTimeout(send, WAIT);
  }

  function mark(field) {
    field.closest('.cell').classList.toggle('unsent', unsent.has(field.dataset.cell));
  }

  function keepOnShelf() {
    try {
      if (unsent.size) localStorage.setItem(shelf, JSON.stringify(Array.from(unsent)));
      else localStorage.removeItem(shelf);
    } catch (full) { /* the device keeps nothing; the server still does */ }
  }

  function takeFromShelf() {
    let left = [];
    try { left = JSON.parse(localStorage.getItem(shelf) || '[]'); } catch (broken) { left = []; }
    for (const [cell, what] of left) {
      const field = byCell.get(cell);
      if (!field || field.value === what.typed) continue;
      field.value = what.typed;
      unsent.set(cell, what);
      mark(field);
    }
    keepOnShelf();
    if (unsent.size) send();
  }

  // --- sending ---------------------------------------------------------------------------------

  function send() {
    clearTimeout(timer);
    if (sending) return sending.then(() => (unsent.size && !pause ? send() : undefined));
    if (!unsent.size) return Promise.resolve();
    const batch = new Map(unsent);
    const body = {
      since: since,
      readings: Array.from(batch, ([cell, w]) => ({ cell: cell, typed: w.typed, base: w.base })),
    };
    saved.textContent = says.saving;
    sending = fetch(form.dataset.send, {
      method: 'PATCH',
      credentials: 'same-origin',
      redirect: 'manual',
      headers: { 'Content-Type': 'application/json', 'X-Lapline': 'page' },
      body: JSON.stringify(body),
    }).then(answer => heard(answer, batch), () => offline())
      .finally(() => { sending = null; });
    return sending;
  }

  function heard(answer, batch) {
    const kind = answer.headers.get('Content-Type') || '';
    if (answer.ok && kind.includes('json')) return answer.json().then(now => take(now, batch));
    if (answer.status === 401 || answer.type === 'opaqueredirect') return signedOut();
    if (answer.status >= 500 || !kind.includes('json')) return later(says.server);
    return answer.json().then(problem => tell(say(says.refused, problem.detail || problem.title)));
  }

  function take(now, batch) {
    pause = 0;
    since = now.revision;
    document.getElementById('base').value = since;
    document.getElementById('submit').value = form.dataset.attempt + '/' + since;
    for (const cell of batch.keys()) {
      // typed again while it was on its way: that goes with the next group
      if (unsent.get(cell) && unsent.get(cell).typed === batch.get(cell).typed) unsent.delete(cell);
    }
    now.cells.forEach(showKept);
    now.conflicts.forEach(showClash);
    showProblems(now.problems.concat(now.refused));
    fields.forEach(mark);
    keepOnShelf();
    untell();
    saved.textContent = say(says.saved, now.savedTime);
    if (unsent.size) { timer = setTimeout(send, WAIT); }
  }

  function showKept(cell) {
    const field = byCell.get(cell.cell);
    if (!field) return;
    field.dataset.revision = cell.revision;
    kept.set(cell.cell, cell.typed);
    const waiting = unsent.get(cell.cell);
    if (waiting) waiting.base = cell.revision;
    else if (field.value.trim() !== cell.typed) field.value = cell.typed;
    if (field.tagName === 'INPUT') part(field, '.understood').textContent = cell.understood;
    lightFilled(field);
  }

  function showProblems(problems) {
    const wrong = new Map(problems.map(p => [p.cell, p.says]));
    for (const field of fields) {
      const text = wrong.get(field.dataset.cell) || '';
      part(field, '.wrong').textContent = text;
      field.setAttribute('aria-invalid', text ? 'true' : 'false');
      if (text) part(field, '.understood').textContent = '';
    }
  }

  function part(field, which) {
    return field.closest('.cell').querySelector(which);
  }

  // --- two windows wrote at the same place ------------------------------------------------------

  function showClash(c) {
    const field = byCell.get(c.cell);
    if (!field) return;
    clearClash(c.cell);
    const box = document.createElement('div');
    box.className = 'clash';
    box.setAttribute('role', 'alert');
    const text = document.createElement('p');
    text.textContent = say(says.conflict, c.theirs || says.empty, c.yours || says.empty);
    box.append(text,
      button(say(says.mine, c.yours || says.empty), () => settle(c, c.yours)),
      button(say(says.theirs, c.theirs || says.empty), () => settle(c, c.theirs)));
    field.closest('.cell').append(box);
    clashes.set(c.cell, box);
  }

  function settle(c, chosen) {
    const field = byCell.get(c.cell);
    field.dataset.revision = c.revision;
    field.value = chosen;
    typed(field);
    send();
    field.focus();
  }

  function clearClash(cell) {
    const box = clashes.get(cell);
    if (box) box.remove();
    clashes.delete(cell);
  }

  function button(label, press) {
    const b = document.createElement('button');
    b.type = 'button';
    b.className = 'other';
    b.textContent = label;
    b.addEventListener('click', press);
    return b;
  }

  // --- when it cannot be sent -------------------------------------------------------------------

  function offline() {
    later(say(says.offline, unsent.size));
  }

  function signedOut() {
    tell(says.signedOut);
    const link = document.createElement('a');
    link.href = says.signInPage;
    link.target = '_blank';
    link.rel = 'noopener';
    link.className = 'other';
    link.textContent = says.signIn;
    trouble.append(link, ' ', button(says.retry, send));
    pause = 1;
  }

  function later(text) {
    tell(text);
    trouble.append(button(says.retry, send));
    pause = Math.min(60000, pause ? pause * 2 : 5000);
    clearTimeout(timer);
    timer = setTimeout(send, pause);
  }

  function tell(text) {
    saved.textContent = '';
    trouble.replaceChildren();
    const p = document.createElement('p');
    p.textContent = text;
    trouble.append(p);
  }

  function untell() {
    trouble.replaceChildren();
  }

  // --- hands ------------------------------------------------------------------------------------

  function next(field, back) {
    const down = below(field, back ? -1 : 1);
    const i = fields.indexOf(field);
    const to = down || (back ? fields[i - 1] : afterGrid(field)) || document.getElementById('score');
    to.focus();
    if (to.select) to.select();
  }

  /** The field below in the same table; a column is read from top to bottom, past its gaps. */
  function below(field, by) {
    const cell = field.closest('td');
    if (!cell) return fields[fields.indexOf(field) + by];
    const rows = Array.from(cell.closest('tbody').rows);
    const here = column(rows, cell.cellIndex);
    const beside = column(rows, cell.cellIndex + by);
    return here[here.indexOf(field) + by] || beside[by > 0 ? 0 : beside.length - 1];
  }

  function column(rows, index) {
    return rows.map(row => fieldIn(row.cells[index])).filter(Boolean);
  }

  /** Null where nothing is measured. */
  function fieldIn(cell) {
    return cell ? cell.querySelector('[data-cell]') : null;
  }

  function afterGrid(field) {
    const table = field.closest('table');
    const last = table ? fields.filter(f => table.contains(f)).pop() : field;
    return fields[fields.indexOf(last) + 1];
  }

  function light(field) {
    const place = field ? field.dataset.place : '0';
    const drawn = field && place !== '0' ? field.closest('.places') : null;
    form.querySelectorAll('[data-spot]').forEach(s =>
      s.classList.toggle('lit', s.dataset.spot === place && drawn !== null && drawn.contains(s)));
    form.querySelectorAll('.reading-now').forEach(line => {
      line.textContent = drawn && drawn.contains(line) ? field.getAttribute('aria-label') : '';
    });
    for (const part of new Set([drawn, read])) {
      if (part) part.querySelectorAll('[data-place]').forEach(lightFilled);
    }
    read = drawn;
  }

  /**
   * A drawing shows what is written down beside it, not what another part asked at the same place;
   * while a column is being read, what is written down in that column.
   */
  function lightFilled(field) {
    const place = field.dataset.place;
    const drawn = field.closest('.places');
    if (place === '0' || !drawn) return;
    const now = document.activeElement && document.activeElement.closest('[data-cell]');
    const column = now && drawn.contains(now) ? columnOf(now) : null;
    const filled = fields.some(f => f.dataset.place === place && drawn.contains(f)
      && (!column || columnOf(f) === column) && f.value.trim());
    drawn.querySelectorAll('[data-spot="' + place + '"]').forEach(s =>
      s.classList.toggle('filled', filled));
  }

  function columnOf(field) {
    const cell = field.closest('td');
    return cell ? cell.closest('table').id + ' ' + cell.cellIndex : null;
  }

  // --- a block from a spreadsheet ---------------------------------------------------------------

  function paste(event) {
    const field = event.target.closest('[data-cell]');
    const text = (event.clipboardData || { getData: () => '' }).getData('text');
    if (!field) return;
    const single = !/[\t\n\r]/.test(text.replace(/[\r\n]+$/, ''));
    const most = single ? LONGEST : MOST_PASTED;
    if (single && text.length <= most) return;
    event.preventDefault();
    if (text.length > most) {
      return tell(say(says.pasteLong, count(text.length), count(most)));
    }
    const block = text.replace(/[\r\n]+$/, '').split(/\r\n|\r|\n/).map(l => l.split('\t'));
    const room = roomFrom(field);
    const wide = Math.max(...block.map(r => r.length));
    if (block.length > room.length || wide > room[0].length) {
      const saying = fromTheTop(field) ? says.pasteManyTop : says.pasteMany;
      return tell(say(saying, block.length, wide, room.length, room[0].length));
    }
    const placed = block.flatMap((line, r) => line.map((value, c) => [room[r][c], value.trim()]));
    // a block may have a free row for the first pass, which has no step before it
    if (placed.some(([to, value]) => !to && value)) return tell(says.pasteGap);
    untell();
    const taken = placed.filter(([to]) => to);
    taken.forEach(([to, value]) => {
      to.value = value;
      typed(to);
    });
    saved.textContent = say(says.pasted, taken.length);
  }

  /** Whether there is nothing above or before it where a block could begin instead. */
  function fromTheTop(field) {
    const cell = field.closest('td');
    if (!cell) return field.closest('.singly').querySelector('[data-cell]') === field;
    return cell.cellIndex === 1 && column(Array.from(cell.closest('tbody').rows), 1)[0] === field;
  }

  /** The fields from this one to the right and down; outside a table, the single fields below. */
  function roomFrom(field) {
    const cell = field.closest('td');
    if (!cell) {
      const group = Array.from(field.closest('.singly').querySelectorAll('[data-cell]'));
      return group.slice(group.indexOf(field)).map(f => [f]);
    }
    const rows = Array.from(cell.closest('tbody').rows);
    return rows.slice(rows.indexOf(cell.parentNode)).map(row =>
      Array.from(row.cells).slice(cell.cellIndex).map(fieldIn));
  }

  // --- the same for all that is still open ------------------------------------------------------

  function chooseRest(press) {
    const rows = document.getElementById('grid-' + press.dataset.grid).tBodies[0].rows;
    const open = column(Array.from(rows), Number(press.dataset.column)).filter(f => !f.value);
    open.forEach(f => {
      f.value = press.dataset.rest;
      typed(f);
      lightFilled(f);
    });
    saved.textContent = open.length
      ? say(says.rest, open.length, press.textContent.trim()) : says.restNone;
  }

  form.querySelectorAll('.rest').forEach(line => { line.hidden = false; });
  form.addEventListener('click', e => {
    const press = e.target.closest('[data-rest][data-grid]');
    if (press) chooseRest(press);
  });

  // --- scoring waits for what is on its way -----------------------------------------------------

  let sure = false;
  form.addEventListener('submit', event => {
    if (!navigator.onLine) {
      // the browser would put its own empty page in the place of this one
      event.preventDefault();
      return offline();
    }
    if (sure || (!unsent.size && !sending && !clashes.size)) return;
    event.preventDefault();
    const pressed = event.submitter;
    (clashes.size ? Promise.resolve() : send()).then(() => {
      if (clashes.size) {
        const box = clashes.values().next().value;
        box.scrollIntoView({ block: 'center' });
        box.querySelector('button').focus();
      } else if (unsent.size) {
        if (!trouble.hasChildNodes()) tell(says.unsent);
      } else {
        sure = true;
        form.requestSubmit(pressed);
      }
    });
  });

  form.addEventListener('input', e => { if (e.target.dataset.cell) typed(e.target); });
  form.addEventListener('change', e => { if (e.target.dataset.cell) typed(e.target); });
  form.addEventListener('focusin', e => light(e.target.closest('[data-cell]')));
  form.addEventListener('paste', paste);
  form.addEventListener('keydown', e => {
    if (e.key !== 'Enter' || !e.target.dataset.cell) return;
    e.preventDefault();
    next(e.target, e.shiftKey);
  });
  // where the page before sent one to read a place again
  const sent = document.getElementById(new URLSearchParams(location.search).get('at') || '');
  if (sent && sent.dataset.cell) {
    sent.scrollIntoView({block: 'center'});
    sent.focus();
    if (sent.select) sent.select();
  }
  window.addEventListener('online', () => {
    pause = 0;
    if (unsent.size) send();
    else untell();
  });
  window.addEventListener('offline', offline);
  fields.forEach(lightFilled);
  takeFromShelf();
}());
