// A slider moves the number beside it; the server is asked for the film of these numbers and its
// answer is put in place. Without this script the form's own button does the same.
const form = document.querySelector('form.what-if');
const answer = document.getElementById('answer');
let asked = 0;
let waiting;

const number = field => field.querySelector('input[type=text]');
const slider = field => field.querySelector('input[type=range]');
const slid = () => [...form.querySelectorAll('.field')].filter(slider);

function soon(wait, without) {
  clearTimeout(waiting);
  waiting = setTimeout(() => ask(without), wait);
}

async function ask(without) {
  const mine = ++asked;
  const numbers = new URLSearchParams(new FormData(form));
  numbers.delete(without);
  const reply = await fetch('?' + numbers).catch(() => null);
  if (mine !== asked) return;
  const page = reply?.ok && new DOMParser().parseFromString(await reply.text(), 'text/html');
  if (mine !== asked) return;
  if (!page || !page.getElementById('answer')) return form.submit();
  show(page);
  history.replaceState(null, '', '?' + new URLSearchParams(new FormData(form)));
}

function show(page) {
  document.title = page.title;
  const title = page.querySelector('h1').textContent;
  document.querySelector('h1').textContent = title;
  document.getElementById('spoken').textContent = title;
  const open = answer.querySelector('details')?.open;
  answer.replaceChildren(...page.getElementById('answer').childNodes);
  if (open) answer.querySelector('details')?.setAttribute('open', '');
  for (const field of slid()) take(field, page.getElementById(field.id));
}

// What was typed stays; label, slider and what is wrong are as the server says.
function take(field, from) {
  field.querySelector('label').textContent = from.querySelector('label').textContent;
  field.querySelector('.wrong').textContent = from.querySelector('.wrong').textContent;
  const typed = number(field);
  typed.setAttribute('aria-invalid', number(from).getAttribute('aria-invalid'));
  if (typed !== document.activeElement) typed.value = number(from).value;
  if (slider(field) === document.activeElement) return;
  for (const end of ['min', 'max', 'step']) slider(field)[end] = slider(from).getAttribute(end);
  slider(field).value = slider(from).getAttribute('value');
}

for (const field of slid()) {
  slider(field).hidden = false;
  slider(field).addEventListener('input', () => {
    number(field).value = slider(field).value;
    soon(60);
  });
  number(field).addEventListener('input', () => soon(400));
}
document.getElementById('change').addEventListener('change', () => soon(0, 'to'));
form.classList.add('alive');
