// The film that a hand leaves on a panel; the same equations as StrokeFilm on the server, which a
// test holds against these. Lengths in metres.
const REACH = 1.3;
const BLUR = 0.1;
const STEPS = 64;
const LOST_WITH_DISTANCE = 2.5;
const LOST_AT_TWICE_THE_DISTANCE = 0.3;
const LEAST_ARRIVING = 0.01;
const LEAST_LEFT = 0.02;

const blurred = v => BLUR * Math.log1p(Math.exp(v / BLUR));

/** The fan of this shape and lean, as a function of the place across it in half fans. */
function fan(beta, lean) {
  let sum = 0;
  let squares = 0;
  for (let i = 1; i < STEPS; i++) {
    const u = REACH * (2 * i / STEPS - 1);
    const film = Math.pow(blurred(1 - u * u), beta - 1);
    sum += film;
    squares += film * u * u;
  }
  const narrowing = Math.sqrt((2 * beta + 1) * squares / sum);
  const scale = STEPS / REACH / sum;
  return u => {
    if (!(Math.abs(u) < REACH)) return 0;
    const w = narrowing * u;
    return narrowing * scale * Math.pow(blurred(1 - w * w), beta - 1) * (1 + lean * u);
  };
}

const fade = (from, length) => {
  const rest = 1 - Math.max(0, from) / length;
  return rest > 0 ? rest * rest : 0;
};

function atEnd(end, x, width) {
  if (end.end === 'LEFT') return fade(x, end.length);
  if (end.end === 'RIGHT') return fade(width - x, end.length);
  return Math.max(fade(x, end.length), fade(width - x, end.length));
}

/** The square of the gun's distance at the ends over that in the middle, less 1, where an arc takes this share of the film. */
const bowOf = missing => Math.pow(1 - missing, -2 / LOST_WITH_DISTANCE) - 1;

/** Film at any place of a panel. */
export function filmOf(s) {
  const across = fan(s.shape, s.lean);
  const bow = bowOf(s.missingAtEnds);
  const front = s.level * s.step / (s.fanWidth * s.coats.length);
  const passes = s.coats.flat();
  return (x, y) => {
    const fromMiddle = 2 * x / s.width - 1;
    const distance = Math.sqrt(1 + bow * fromMiddle * fromMiddle);
    const lost = Math.pow(distance, -LOST_WITH_DISTANCE);
    let share = 1 + s.along * (x / s.width - 0.5) + s.across * (y / s.height - 0.5);
    for (const e of s.ends) share += e.share * atEnd(e, x, s.width);
    let sum = 0;
    for (const p of passes) sum += p.times * across(2 * (y - p.height) / (s.fanWidth * distance));
    let film = front * lost * Math.max(LEAST_LEFT, share) / distance * sum;
    for (const t of s.strips) film += t.times * front * s.coats.length * across(2 * (y - t.height) / s.fanWidth);
    return film;
  };
}

function even(coat, step, fanWidth, height) {
  let anchor = coat[0].height;
  for (const p of coat) if (Math.abs(p.height - height) < Math.abs(anchor - height)) anchor = p.height;
  const reach = fanWidth / 2 + step;
  const lowest = anchor - Math.floor((anchor + reach) / step) * step;
  const passes = [];
  for (let i = 0; lowest + i * step <= height + reach; i++) passes.push({height: lowest + i * step, times: 1});
  return passes;
}

/** The same panel with step, distance, speed, missingAtEnds and coats as given. */
export function changed(s, change) {
  const fanWidth = s.fanWidth * change.distance;
  const coats = [];
  for (let i = 0; i < change.coats; i++) {
    const coat = s.coats[i % s.coats.length];
    coats.push(change.step === s.step ? coat : even(coat, change.step, fanWidth, s.height));
  }
  const arrives = Math.max(LEAST_ARRIVING, 1 - LOST_AT_TWICE_THE_DISTANCE * (change.distance - 1));
  return {
    ...s,
    level: s.level * s.step / change.step * arrives / change.speed * change.coats / s.coats.length,
    step: change.step,
    fanWidth,
    missingAtEnds: change.missingAtEnds,
    coats,
  };
}

export const asItWas = s => ({step: s.step, distance: 1, speed: 1, missingAtEnds: s.missingAtEnds, coats: s.coats.length});
