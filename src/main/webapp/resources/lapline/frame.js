// What every page does once it is there. After an error: the summary is read first, each field it
// names says that it is wrong and by which words, and Back never asks to send a form again.
(function () {
  'use strict';

  // the answer to a form stands in the history as its page, not as a form to send once more
  history.replaceState(history.state, '', location.href);

  const summary = document.querySelector('.errors');
  if (summary) {
    summary.querySelectorAll('a[href^="#"]').forEach(tie);
    summary.focus();
  }

  function tie(link) {
    const field = document.getElementById(decodeURIComponent(link.hash.slice(1)));
    if (!field) return;
    const words = saidAt(field) || link;
    words.id = words.id || field.id + '-wrong';
    controls(field).forEach((control) => {
      if (!/radio|checkbox|fieldset/.test(control.type)) control.setAttribute('aria-invalid', 'true');
      describe(control, words.id);
    });
  }

  // the sentence beside the field, where there is one
  function saidAt(field) {
    const around = field.closest('.field, fieldset');
    const said = around ? Array.from(around.querySelectorAll('.wrong')) : [];
    return said.find((words) => words.textContent.trim());
  }

  function controls(field) {
    const one = field.matches('input, select, textarea, fieldset');
    return one ? [field] : Array.from(field.querySelectorAll('input, select, textarea'));
  }

  function describe(control, id) {
    const ids = (control.getAttribute('aria-describedby') || '').split(' ').filter(Boolean);
    if (!ids.includes(id)) control.setAttribute('aria-describedby', ids.concat(id).join(' '));
  }

  // a page that has a place of its own for this says it there
  if (window.faces && faces.ajax && !document.getElementById('trouble')) {
    const cutOff = document.getElementById('cut-off');
    faces.ajax.addOnError(() => { cutOff.hidden = false; });
    faces.ajax.addOnEvent((sent) => { if (sent.status === 'success') cutOff.hidden = true; });
  }
})();
