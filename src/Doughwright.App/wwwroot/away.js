// While the desk is away, what is typed is noted here, with what was typed just before and not left yet. It comes back with the page, which loads itself
// again as soon as the desk answers, and with a page that is loaded again by hand; what finds no field any more is shown.
const lost = document.getElementById('components-reconnect-modal');
const noted = 'typed-while-away';
const writable = 'main :is(input:not([type=file], [type=hidden], [type=radio], [type=checkbox]), select, textarea)';
const away = () => ['show', 'failed', 'rejected', 'paused', 'resume-failed'].some(state => lost.classList.contains(`components-reconnect-${state}`));
const unsent = new Map();
const underway = new Set();
document.addEventListener('input', event => {
  if (event.target.id && event.target.matches?.(writable)) unsent.set(event.target.id, event.target.value);
}, true);
document.addEventListener('change', event => {
  const field = event.target;
  if (!field.id || !field.matches?.(writable)) return;
  unsent.set(field.id, field.value);
  if (!isLine(field) && !away()) underway.add(field.id);
}, true);
document.addEventListener('submit', event => { if (!away()) for (const field of event.target.elements) unsent.delete(field.id); }, true);
// A line is sent by Enter, not by a change, and what was refused of it stands in its field.
const isLine = field => field.localName === 'input' && field.dataset.picks;
// What the page shows after a change, it shows because the change has arrived.
new MutationObserver(() => {
  for (const id of underway) unsent.delete(id);
  underway.clear();
}).observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true });

const note = () => {
  const open = [...document.querySelectorAll('main [data-place][aria-expanded=true]')].map(part => part.dataset.place);
  for (const id of unsent.keys()) {
    const field = document.getElementById(id);
    if (field && isLine(field) && field.value === '') unsent.delete(id);
    else if (field) unsent.set(id, field.value);
  }
  if (unsent.size > 0 || open.length > 0) sessionStorage.setItem(noted, JSON.stringify({ at: location.pathname, open, fields: [...unsent] }));
  else sessionStorage.removeItem(noted);
};
// A page that is left or loaded again is hidden first. Before what rests in a field is sent: whether that still arrives is not known.
document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'hidden') note(); }, true);

const until = milliseconds => new Promise(done => setTimeout(done, milliseconds));
const answers = () => fetch('/mark.svg', { cache: 'no-store' }).then(answer => answer.ok, () => false);
let returning = false;
new MutationObserver(async () => {
  if (returning || !['failed', 'rejected', 'resume-failed'].some(state => lost.classList.contains(`components-reconnect-${state}`))) return;
  returning = true;
  while (!await answers()) await until(1000);
  location.reload();
}).observe(lost, { attributes: true, attributeFilter: ['class'] });
// A page that is loaded from nobody would be gone, so it is loaded only when somebody answers.
lost.querySelector('[data-again]').addEventListener('click', async event => {
  event.preventDefault();
  const told = lost.querySelector('[data-still]');
  told.hidden = true;
  if (await answers()) location.reload();
  else told.hidden = false;
});

const back = JSON.parse(sessionStorage.getItem(noted) ?? 'null');
sessionStorage.removeItem(noted);
if (back?.at === location.pathname) {
  const waiting = new Map(back.fields);
  const put = () => {
    for (const [id, value] of waiting) {
      const field = document.getElementById(id);
      if (!field) continue;
      waiting.delete(id);
      if (field.value === value) continue;
      field.value = value;
      field.dispatchEvent(new Event('input', { bubbles: true }));
      if (!field.dataset.picks || field.localName === 'textarea') field.dispatchEvent(new Event('change', { bubbles: true }));
    }
  };
  const show = () => {
    const told = document.getElementById('typed-away');
    for (const value of waiting.values()) told.querySelector('ul').append(Object.assign(document.createElement('li'), { textContent: value }));
    if (waiting.size === 0) return;
    told.role = 'alert';
    told.hidden = false;
  };
  const first = document.querySelector('main');
  // A page that answers is laid anew once; only then is somebody there to take it. One that is only a form takes it at once.
  if (first?.querySelector('form[method=post]')) put();
  let isLaid = false;
  const closed = new Set(back.open);
  new MutationObserver(() => {
    isLaid ||= !first.isConnected;
    if (!isLaid) return;
    // What lies in something that was open shows only once that is open again.
    for (const part of document.querySelectorAll('main [data-place][aria-expanded=false]')) if (closed.delete(part.dataset.place)) part.click();
    put();
  }).observe(document.body, { childList: true, subtree: true });
  setTimeout(show, 10000);
}
