/*
 * A paper keeps itself: each change is saved by its field. This adds two things: a number is saved
 * while it is being typed, and it is said at once when saving does not work. Without this script the
 * paper can be sat all the same.
 */
(function () {
  'use strict';
  const form = document.getElementById('sit');
  const trouble = document.getElementById('trouble');
  if (!form || !trouble) return;
  const WAIT = 1500;
  let timer = 0;

  form.addEventListener('input', (e) => {
    if (e.target.type !== 'text') return;
    clearTimeout(timer);
    timer = setTimeout(() => e.target.dispatchEvent(new Event('change', { bubbles: true })), WAIT);
  });

  if (window.faces && faces.ajax) {
    faces.ajax.addOnError(() => { trouble.textContent = trouble.dataset.says; });
    faces.ajax.addOnEvent((e) => { if (e.status === 'success') trouble.textContent = ''; });
  }
})();
