// Sprays a judged panel again with what the sliders say, and draws it beside what was read.
const page = document.getElementById('panel-what-if');
const given = JSON.parse(document.getElementById('panel-data').textContent);
const {filmOf, changed, asItWas} = await import(page.dataset.equations);

const was = given.stroke;
const filmWas = filmOf(was);
const COLUMNS = 60;
const ROWS = Math.max(12, Math.round(COLUMNS * was.height / was.width));
const usualTop = 1.15 * given.highest;
const sliders = Object.fromEntries(['overlap', 'distance', 'speed', 'arc', 'coats'].map(id => [id, document.getElementById(id)]));
const says = id => document.getElementById(id + '-says');
const write = film => (film / given.unit.size).toFixed(given.unit.digits);
const signed = film => (Number(write(film)) === 0 ? '' : film < 0 ? '\u2212' : '+') + write(Math.abs(film));
const percent = share => Math.round(100 * share) + '\u00a0%';

/** A share of what was written down, with what that is; of what nobody wrote down the share alone. */
function ofWhatWas(id) {
  const now = Number(sliders[id].value);
  const written = given.hand[id]?.[now - Number(sliders[id].min)];
  return percent(now / 100) + (written ? ` \u2013 ${written}` : '');
}

function change() {
  const still = asItWas(was);
  const distance = Number(sliders.distance.value) / 100;
  const fan = was.fanWidth * distance;
  return {
    // a slider that nobody moved leaves the step as it was, not as its own grid rounds it
    step: sliders.overlap.dataset.moved ? fan * (1 - Number(sliders.overlap.value) / 100) : still.step,
    distance,
    speed: Number(sliders.speed.value) / 100,
    missingAtEnds: sliders.arc.dataset.moved ? Number(sliders.arc.value) / 100 : still.missingAtEnds,
    coats: Number(sliders.coats.value),
  };
}

function grid(film) {
  const cells = new Float64Array(COLUMNS * ROWS);
  for (let r = 0; r < ROWS; r++) {
    for (let c = 0; c < COLUMNS; c++) {
      cells[r * COLUMNS + c] = film((c + 0.5) / COLUMNS * was.width, (r + 0.5) / ROWS * was.height);
    }
  }
  return cells;
}

function summary(cells) {
  let least = Infinity;
  let greatest = 0;
  let sum = 0;
  let inside = 0;
  for (const film of cells) {
    least = Math.min(least, film);
    greatest = Math.max(greatest, film);
    sum += film;
    if (film >= given.least && film <= given.most) inside++;
  }
  return {mean: sum / cells.length, least, most: greatest, inside: inside / cells.length};
}

/** A canvas as sharp as the screen, and its context in the panel's millimetres, y upwards. */
function panel(id) {
  const canvas = document.getElementById(id);
  const wide = canvas.clientWidth || 300;
  const sharp = window.devicePixelRatio || 1;
  canvas.width = wide * sharp;
  canvas.height = wide * was.height / was.width * sharp;
  const on = canvas.getContext('2d');
  on.scale(canvas.width / was.width / 1000, canvas.height / was.height / 1000);
  return on;
}

/** Of the shades that the legend has. */
function shade(film) {
  const {thinnest, thickest, tones} = given.scale;
  const share = (film - thinnest) / (thickest - thinnest);
  return tones[Math.max(0, Math.min(tones.length - 1, Math.floor(tones.length * share)))];
}

function map(id, cells) {
  const on = panel(id);
  const w = was.width * 1000 / COLUMNS;
  const h = was.height * 1000 / ROWS;
  for (let r = 0; r < ROWS; r++) {
    for (let c = 0; c < COLUMNS; c++) {
      const film = cells[r * COLUMNS + c];
      const x = c * w;
      const y = (ROWS - 1 - r) * h;
      on.fillStyle = shade(film);
      on.fillRect(x, y, w + 0.5, h + 0.5);
      if (film < given.least && (r + c) % 2 === 0) {
        on.fillStyle = '#1d1b18';
        on.fillRect(x + w / 2 - 1.2, y + h / 2 - 1.2, 2.4, 2.4);
      } else if (film > given.most) {
        on.strokeStyle = '#1d1b18';
        on.lineWidth = 1.2;
        on.beginPath();
        on.moveTo(x, y + h);
        on.lineTo(x + w, y);
        on.stroke();
      }
    }
  }
}

function numbers(id, words, isOff) {
  const on = panel(id);
  const size = Math.max(24, was.width * 1000 / (document.getElementById(id).clientWidth || 300) * 13);
  on.fillStyle = '#f4f4f2';
  on.fillRect(0, 0, was.width * 1000, was.height * 1000);
  on.textAlign = 'center';
  on.textBaseline = 'middle';
  for (const p of given.places) {
    const off = !p.aside && isOff(p);
    const text = p.aside ? page.dataset.aside.replace('{0}', words(p)) : words(p);
    on.font = `${off ? 700 : 400} ${size}px sans-serif`;
    on.fillStyle = off ? '#8a1c00' : p.aside ? '#5b636c' : '#1d2126';
    // a stray reading has long figures, which have to stay on the panel too
    const half = Math.max(1.2 * size, on.measureText(text).width / 2);
    const x = Math.min(was.width * 1000 - half, Math.max(half, p.x * 1000));
    on.fillText(text, x, (was.height - p.y) * 1000);
  }
}

const CUT = {high: 190, head: 28, foot: 24, left: 48, letter: 13};

/** Film along the middle of the panel, from the lower edge to the upper. */
const alongCut = film => Array.from({length: 121}, (_, i) => film(was.width / 2, i / 120 * was.height));

const cutWas = alongCut(filmWas);

/** As it was wherever that holds the line, so that small changes do not move the band; else a round number above it. */
function topOver(highest) {
  if (highest <= usualTop) return usualTop;
  const number = highest / given.unit.size;
  const step = Math.pow(10, Math.floor(Math.log10(number))) / 4;
  return Math.ceil(1.02 * number / step) * step * given.unit.size;
}

/** A canvas of the cut's height, as sharp as the screen. */
function cutCanvas() {
  const canvas = document.getElementById('cut');
  const wide = canvas.clientWidth || 300;
  const sharp = window.devicePixelRatio || 1;
  canvas.width = wide * sharp;
  canvas.height = CUT.high * sharp;
  const on = canvas.getContext('2d');
  on.scale(sharp, sharp);
  on.font = `${CUT.letter}px sans-serif`;
  return {canvas, on, wide};
}

function cut(film) {
  const {canvas, on, wide} = cutCanvas();
  const line = alongCut(film);
  const top = topOver(Math.max(...cutWas, ...line));
  const ground = CUT.high - CUT.foot;
  const y = f => ground - (ground - CUT.head) * f / top;
  on.fillStyle = '#dfe8df';
  on.fillRect(CUT.left, y(given.most), wide - CUT.left, y(given.least) - y(given.most));
  curve(on, cutWas, wide, y, [5, 4], '#5b636c');
  curve(on, line, wide, y, [], '#1d2126');
  axis(on, top, y);
  on.textBaseline = 'alphabetic';
  on.textAlign = 'left';
  on.fillText(page.dataset.lower, CUT.left, CUT.high - 5);
  on.textAlign = 'right';
  on.fillText(page.dataset.upper, wide - 2, CUT.high - 5);
  canvas.dataset.top = write(top);
}

/** The figures of top, range and ground; a figure that another would cover moves down. */
function axis(on, top, y) {
  const figures = [[top, write(top)], [given.most, given.limits.most], [given.least, given.limits.least], [0, '0']];
  on.fillStyle = '#1d2126';
  on.textAlign = 'right';
  on.textBaseline = 'middle';
  let free = 0;
  for (const [film, figure] of figures) {
    on.fillRect(CUT.left - 4, y(film) - 0.5, 4, 1);
    free = Math.max(y(film), free);
    on.fillText(figure, CUT.left - 7, free);
    free += CUT.letter + 1;
  }
  on.textAlign = 'left';
  on.fillText(page.dataset.film, 2, CUT.letter * 0.6);
}

function curve(on, films, wide, y, dash, colour) {
  on.setLineDash(dash);
  on.strokeStyle = colour;
  on.lineWidth = 2;
  on.beginPath();
  films.forEach((f, i) => on.lineTo(CUT.left + i / (films.length - 1) * (wide - CUT.left), y(f)));
  on.stroke();
}

function row(id, now, then, words) {
  document.getElementById(id + '-was').textContent = words(now);
  document.getElementById(id + '-then').textContent = words(then);
}

const then = id => document.getElementById(id + '-then').textContent;
const spoken = () => page.dataset.spoken.replace('{0}', then('mean')).replace('{1}', then('inside'));

const before = summary(grid(filmWas));

function redraw() {
  const started = performance.now();
  const what = change();
  const film = filmOf(changed(was, what));
  const cells = grid(film);
  const after = summary(cells);
  map('then', cells);
  cut(film);
  row('mean', before.mean, after.mean, write);
  row('least', before.least, after.least, write);
  row('most', before.most, after.most, write);
  row('inside', before.inside, after.inside, percent);
  document.getElementById('now').textContent = spoken();
  says('overlap').textContent = percent(1 - what.step / (was.fanWidth * what.distance));
  says('distance').textContent = ofWhatWas('distance');
  says('speed').textContent = ofWhatWas('speed');
  says('arc').textContent = percent(what.missingAtEnds);
  says('coats').textContent = what.coats;
  page.dataset.drawnIn = performance.now() - started;
}

function still() {
  numbers('off', p => signed(p.film - filmWas(p.x, p.y)),
    p => Math.abs(p.film - filmWas(p.x, p.y)) > 3 * given.scatter);
}

function back() {
  const start = asItWas(was);
  sliders.overlap.value = 100 * (1 - start.step / was.fanWidth);
  sliders.distance.value = 100;
  sliders.speed.value = 100;
  sliders.arc.value = 100 * start.missingAtEnds;
  sliders.coats.value = start.coats;
  for (const s of Object.values(sliders)) delete s.dataset.moved;
  redraw();
}

for (const s of Object.values(sliders)) {
  s.addEventListener('input', () => {
    s.dataset.moved = 'yes';
    redraw();
  });
  s.addEventListener('change', () => {
    document.getElementById('spoken').textContent = spoken();
  });
}
for (const button of page.querySelectorAll('[data-slide]')) {
  button.addEventListener('click', () => {
    const slider = sliders[button.dataset.slide];
    slider.value = Number(slider.value) + Number(button.dataset.by);
    slider.dispatchEvent(new Event('input'));
    slider.dispatchEvent(new Event('change'));
  });
}
document.getElementById('back').addEventListener('click', back);
window.addEventListener('resize', () => { still(); redraw(); });
page.hidden = false;
still();
back();
page.dataset.ready = 'yes';
