/* Tells before anything is sent that photographs are too large; the server tells it too, but late. */
(function () {
  'use strict';
  const input = document.getElementById('photograph');
  if (!input) return;
  const told = document.getElementById('photograph-check');
  const form = input.form;

  function trouble() {
    const sizes = Array.from(input.files, file => file.size);
    if (sizes.some(size => size > Number(form.dataset.mostEach))) return told.dataset.each;
    const all = sizes.reduce((sum, size) => sum + size, 0);
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
