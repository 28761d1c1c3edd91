// At the bench: remark and marks are kept at once, on the server, and on this device for as long as
// the server cannot be reached.
(function () {
  'use strict';
  const form = document.getElementById('bench');
  const kept = document.getElementById('kept');
  const cutOff = document.getElementById('cut-off');
  const shelf = 'lapline.bench.' + form.dataset.grader + '.' + form.dataset.attempt;
  let timer = 0;
  let unsent = false;
  let sending = Promise.resolve();

  function written() {
    const marks = {};
    form.querySelectorAll('input[name^="mark:"]:checked').forEach((m) => { marks[m.name.slice(5)] = Number(m.value); });
    return JSON.stringify({ grader: form.dataset.grader, remark: form.elements.remark.value, marks: marks });
  }

  function changed(field) {
    if (!field.name.startsWith('mark:') && field.name !== 'remark') return;
    unsent = true;
    keepOnShelf(written());
    clearTimeout(timer);
    timer = setTimeout(() => send(written()), 600);
  }

  function keepOnShelf(text) {
    try {
      if (text) localStorage.setItem(shelf, text);
      else localStorage.removeItem(shelf);
    } catch (full) { /* this device keeps nothing; the server still does */ }
  }

  function fromShelf() {
    try { return localStorage.getItem(shelf); } catch (closed) { return null; }
  }

  // one after the other, so that the last word is the one that stays
  function send(text) {
    clearTimeout(timer);
    sending = sending.then(() => fetch(form.dataset.send, {
      method: 'PATCH', credentials: 'same-origin', redirect: 'manual', keepalive: true, body: text,
      headers: { 'Content-Type': 'application/json', 'X-Lapline': 'page' },
    })).then((answer) => heard(answer, text), () => { kept.textContent = form.dataset.notKept; return false; });
    return sending;
  }

  function heard(answer, text) {
    if (answer.status === 401 || answer.type === 'opaqueredirect') {
      cutOff.hidden = false;
      return false;
    }
    return answer.json().then((says) => {
      kept.textContent = answer.ok ? form.dataset.kept.replace('{0}', says.savedTime) : says.detail || says.title;
      if (!answer.ok) return false;
      cutOff.hidden = true;
      if (fromShelf() === text) {
        keepOnShelf('');
        unsent = false;
      }
      return true;
    }, () => { kept.textContent = form.dataset.notKept; return false; });
  }

  form.addEventListener('input', (e) => changed(e.target));
  form.addEventListener('change', (e) => changed(e.target));

  // a form about photographs leads away from here: first what is written here
  document.addEventListener('submit', (e) => {
    if (!unsent || e.defaultPrevented || !e.target.closest('#photographs')) return;
    e.preventDefault();
    send(written()).finally(() => e.target.submit());
  });

  // what this device kept when the session was lost goes to the server, and from there on the page
  const left = fromShelf();
  if (left && left !== written()) send(left).then((good) => { if (good) location.reload(); });
  else keepOnShelf('');
})();
