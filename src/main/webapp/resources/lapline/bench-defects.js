// At the bench: a tap on the drawing places the chosen defect, and whoever works by keyboard is led
// to what came of it.
(function () {
  'use strict';
  const form = document.getElementById('bench');

  form.addEventListener('click', (tap) => {
    const map = tap.target.closest('svg.defect-map');
    const away = tap.target.closest('[name=take-away]');
    if (map) placeAt(map, tap);
    if (away) takeAway(away, tap);
  });

  function placeAt(map, tap) {
    const at = new DOMPoint(tap.clientX, tap.clientY).matrixTransform(map.getScreenCTM().inverse());
    form.elements['tap-x'].value = at.x / 1000;
    form.elements['tap-y'].value = (map.dataset.height - at.y) / 1000;
    document.getElementById('place').click();
    form.elements['tap-x'].value = form.elements['tap-y'].value = '';
  }

  function takeAway(button, tap) {
    tap.preventDefault();
    const params = { 'take-away': button.value };
    faces.ajax.request(button, tap, { execute: '@form', render: 'spot map marks by-hand', params });
  }

  let before = 0;
  faces.ajax.addOnEvent((sent) => {
    if (sent.status === 'begin') before = placed().length;
    if (sent.status === 'success') goOn();
  });

  function placed() {
    return Array.from(form.querySelectorAll('.placed li'));
  }

  // to the field that is wrong, to the new line, or to the list that has one line less
  function goOn() {
    const wrong = document.getElementById('spot-wrong');
    const field = wrong.textContent.trim() && document.getElementById(wrong.dataset.field);
    const lines = placed();
    const to = field || (lines.length > before ? lines[lines.length - 1] : document.getElementById('defects'));
    to.focus();
  }
})();
