// A button that copies what stands in another place of the page; not there where the browser cannot.
(function () {
  'use strict';

  document.querySelectorAll('button[data-copy]').forEach((button) => {
    button.hidden = false;
    button.addEventListener('click', () => copy(document.getElementById(button.dataset.copy)).then(
      () => { button.textContent = button.dataset.copied; },
      () => { button.hidden = true; }));
  });

  // over plain http in the shop's own net the browser has no clipboard, but a selection can be copied
  function copy(source) {
    if (navigator.clipboard) return navigator.clipboard.writeText(source.textContent);
    getSelection().selectAllChildren(source);
    return document.execCommand('copy') ? Promise.resolve() : Promise.reject(new Error('not copied'));
  }
})();
