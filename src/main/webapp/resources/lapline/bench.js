// A tap on the panel drawing places the chosen defect there, and taking one away does not reload
// the page; without this script the buttons do the same.
document.getElementById('bench').addEventListener('click', (tap) => {
  const map = tap.target.closest('svg.defect-map');
  const away = tap.target.closest('[name=take-away]');
  if (map) placeAt(map, tap);
  if (away) takeAway(away, tap);
});

function placeAt(map, tap) {
  const at = new DOMPoint(tap.clientX, tap.clientY).matrixTransform(map.getScreenCTM().inverse());
  const form = map.closest('form');
  form.elements['tap-x'].value = at.x / 1000;
  form.elements['tap-y'].value = (map.dataset.height - at.y) / 1000;
  document.getElementById('place').click();
}

function takeAway(button, tap) {
  tap.preventDefault();
  const params = { 'take-away': button.value };
  faces.ajax.request(button, tap, { execute: '@form', render: 'marks', params });
}
