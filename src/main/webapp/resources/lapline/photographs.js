/* Tells before anything is sent that photographs are too large; the server tells it too, but late. */
(function () {
  'use strict';
  const input = document.getElementById('photograph');
  if (!input) return;
  const told = document.getElementById('photograph-check');
  const form = input.form;

  function trouble() {
    const files = Array.from(input.files);
    const large = files.filter(file => file.size > Number(form.dataset.mostEach));
    if (large.length) return told.dataset.each.replace('{0}', large.map(file => file.name).join(', '));
    const all = files.reduce((sum, file) => sum + file.size, 0);
    return all > Number(form.dataset.mostTogether) ? told.dataset.together : '';
  }

  function check() {
    told.textContent = trouble();
    input.setAttribute('aria-invalid', told.textContent ? 'true' : 'false');
    return !told.textContent;
  }

  input.addEventListener('change', check);
  form.addEventListener('submit', event => {
    if (check()) return;
    event.preventDefault();
    input.focus();
  });
}());
