// The little that markup cannot do: the address follows what is set, and a form that only asks is sent when it changes.

/** Puts what is set into the address, so that a link and a reload show the same. */
export function setAddress(address) {
  history.replaceState(history.state, '', address);
  // Links that change one thing of the address keep the rest as it is now.
  for (const link of document.querySelectorAll('a[data-measures]')) {
    const to = new URL(location.href);
    if (link.dataset.measures) to.searchParams.set('measures', link.dataset.measures);
    else to.searchParams.delete('measures');
    link.href = to.href;
  }
}

/** Puts the name of a value into the bracket that is open at the caret, as if it had been typed. */
export function insertName(id, name) {
  const field = document.getElementById(id);
  const caret = field?.selectionStart ?? 0;
  const open = caret === 0 ? -1 : field.value.lastIndexOf('[', caret - 1);
  if (open < 0) return;
  field.focus();
  field.setSelectionRange(open, caret + (field.value[caret] === ']' ? 1 : 0));
  document.execCommand('insertText', false, `[${name}]`);
}

document.addEventListener('change', event => {
  const form = event.target.closest?.('form[data-live]');
  if (form?.checkValidity()) form.requestSubmit();
});

document.addEventListener('click', event => {
  // The address may have moved on since the page was made, so that the link would load it again.
  if (event.target.closest?.('.skip')) {
    event.preventDefault();
    document.getElementById('main').focus();
  }
  // The base of the desk is its root, so a link within a page is followed by hand.
  const inside = event.target.closest?.('a[href^="#"]');
  if (inside) {
    event.preventDefault();
    location.hash = inside.getAttribute('href');
  }
  if (event.target.closest?.('[data-again]')) {
    event.preventDefault();
    location.reload();
  }
});

// Where a list stands under a field, the arrows move in the list and Enter takes from it. What that means is the desk's to say; the caret stays.
document.addEventListener('keydown', event => {
  const picks = event.target.dataset?.picks;
  if (!picks || event.isComposing) return;
  const moves = picks === 'open' && ['ArrowDown', 'ArrowUp', 'Escape', 'Enter'].includes(event.key);
  if (moves || (event.key === 'Enter' && event.target.localName === 'input')) event.preventDefault();
});

// By the keyboard one goes on from what is said: Enter in a step leads to the step after it, in the last one to where one is added, on an empty line to the method. Where Enter makes a new line
// of words, it does so with Ctrl or Cmd.
document.addEventListener('keydown', event => {
  const field = event.target;
  if (event.key !== 'Enter' || event.isComposing || !field.matches) return;
  // A form that adds something is sent from its lists too, as from its fields.
  if (field.matches('form.addpart select')) {
    event.preventDefault();
    field.form.requestSubmit();
    return;
  }
  const ofStep = field.matches('.stepedit > .fields input[type=text]') || ((event.ctrlKey || event.metaKey) && field.matches('.stepedit textarea'));
  const on = ofStep ? field.closest('[data-moves]').nextElementSibling?.querySelector('.ln') ?? field.closest('.stepedit').querySelector(':scope > form select')
    : field.matches('input[data-picks=closed]') && field.value.trim() === '' ? document.querySelector('[aria-labelledby=write-method] :is(.ln, form select)')
      : null;
  if (!on) return;
  event.preventDefault();
  on.focus();
});

// A handle takes its row along. Where it is let go is told as a number of places; the desk moves it, so that there is one order.
let lifted = null;
const lay = () => {
  lifted?.rows.forEach(row => row.classList.remove('lifted', 'dropbefore', 'dropafter'));
  lifted = null;
};
document.addEventListener('pointerdown', event => {
  const grip = event.target.closest?.('.grip');
  if (!grip || event.button !== 0) return;
  const row = grip.closest('[data-moves]');
  const rows = [...row.parentElement.querySelectorAll(':scope > [data-moves]')];
  const at = rows.indexOf(row);
  grip.setPointerCapture(event.pointerId);
  lifted = { grip, row, rows, at, to: at };
  row.classList.add('lifted');
});
document.addEventListener('pointermove', event => {
  if (!lifted) return;
  const { row, rows, at } = lifted;
  const others = rows.filter(other => other !== row);
  const to = others.filter(other => {
    const box = other.getBoundingClientRect();
    return box.top + box.height / 2 < event.clientY;
  }).length;
  lifted.to = to;
  rows.forEach(other => other.classList.remove('dropbefore', 'dropafter'));
  if (to !== at) (to < others.length ? others[to].classList.add('dropbefore') : others.at(-1).classList.add('dropafter'));
});
document.addEventListener('pointerup', () => {
  if (!lifted) return;
  const { grip, at, to } = lifted;
  lay();
  if (to === at) return;
  const field = grip.parentElement.querySelector('.dropped');
  field.value = to - at;
  field.dispatchEvent(new Event('change', { bubbles: true }));
});
document.addEventListener('pointercancel', lay);
document.addEventListener('keydown', event => {
  if (event.key === 'Escape') lay();
});

// When the page begins to answer, it is laid anew. Whoever is in a field or at the content by then stays there, with what was typed.
let held = null;
const hold = event => {
  const field = event.target;
  if (!field.matches?.('main, main input, main select, main textarea')) return;
  held = { field, typed: event.type === 'input' || (held?.field === field && held.typed) };
};
document.addEventListener('focusin', hold);
document.addEventListener('input', hold);
document.addEventListener('focusout', event => setTimeout(() => {
  if (held?.field === event.target && event.target.isConnected) held = null;
}));
new MutationObserver(() => {
  if (!held || held.field.isConnected) return;
  const { field: old, typed } = held;
  held = null;
  const field = old.id ? document.getElementById(old.id)
    : [...document.getElementsByName(old.name)].find(other => other.localName === 'select' || other.value === old.value);
  if (!field || (document.activeElement && document.activeElement !== document.body)) return;
  field.focus();
  if (!typed) return;
  if (old.localName === 'select') {
    field.value = old.value;
    field.dispatchEvent(new Event('change', { bubbles: true }));
  } else if (old.type === 'text' || old.localName === 'textarea') {
    field.value = old.value;
    field.setSelectionRange(old.selectionStart, old.selectionEnd);
    field.dispatchEvent(new Event('input', { bubbles: true }));
    // What was typed before counts as typed here: the browser does not see a change in it.
    field.addEventListener('blur', () => field.dispatchEvent(new Event('change', { bubbles: true })), { once: true });
  }
}).observe(document.body, { childList: true, subtree: true });

// An answer that comes late does not take back what is being typed by then.
const native = field => Object.getOwnPropertyDescriptor(Object.getPrototypeOf(field), 'value');
const guard = field => {
  if (Object.hasOwn(field, 'value')) return;
  Object.defineProperty(field, 'value', { configurable: true, get: () => native(field).get.call(field), set: () => {} });
};
document.addEventListener('input', event => {
  if (event.target.matches?.('.writepage input[type=text], .writepage textarea')) guard(event.target);
}, true);
for (const kind of ['change', 'focusout']) {
  document.addEventListener(kind, event => { if (event.target.matches?.('.writepage :is(input, textarea)')) delete event.target.value; }, true);
}

// Lines that Enter has sent, or will: one is under way at a time, those typed before its answer wait in the field behind it. One that is taken leaves the field, the next goes, and what was
// typed since stays; one that is not taken stays with all that follows, to be mended.
const sent = new WeakMap();
const fill = (field, text) => {
  native(field).set.call(field, text);
  field.dispatchEvent(new Event('input', { bubbles: true }));
};
const answered = new MutationObserver(changes => {
  for (const { target: field } of changes) {
    const lines = sent.get(field) ?? [];
    sent.delete(field);
    if (!field.dataset.answer.endsWith('taken')) continue;
    // Where nothing was typed since, the desk has emptied the field itself.
    const typed = Object.hasOwn(field, 'value');
    if (lines.length === 0 || (typed && !field.value.startsWith(lines[0]))) continue;
    const after = typed ? field.value.slice(lines[0].length) : '';
    if (lines.length === 1) {
      if (typed) fill(field, after);
      continue;
    }
    fill(field, lines[1]);
    field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
    sent.set(field, lines.slice(1));
    fill(field, after);
  }
});
document.addEventListener('keydown', event => {
  const field = event.target;
  if (event.key !== 'Enter' || event.isComposing || !field.dataset?.picks || field.localName !== 'input') return;
  const lines = sent.get(field) ?? [];
  const before = lines.join('');
  if (lines.length > 0 && field.value.startsWith(before)) {
    event.preventDefault();
    event.stopImmediatePropagation();
    lines.push(field.value.slice(before.length));
    return;
  }
  sent.set(field, [field.value]);
  answered.observe(field, { attributeFilter: ['data-answer'] });
  delete field.value;
}, true);

// While the desk is away, what is typed is noted here, with what was typed just before and not left yet. It comes back with the page, which loads itself
// again as soon as the desk answers; what finds no field any more is shown.
const lost = document.getElementById('components-reconnect-modal');
const noted = 'typed-while-away';
const writable = 'main :is(input:not([type=file], [type=hidden], [type=radio], [type=checkbox]), select, textarea)';
const away = () => ['show', 'failed', 'rejected', 'paused', 'resume-failed'].some(state => lost.classList.contains(`components-reconnect-${state}`));
const unsent = new Map();
document.addEventListener('input', event => {
  if (event.target.id && event.target.matches?.(writable)) unsent.set(event.target.id, event.target.value);
}, true);
document.addEventListener('change', event => {
  if (!event.target.id || !event.target.matches?.(writable)) return;
  if (away()) unsent.set(event.target.id, event.target.value);
  else unsent.delete(event.target.id);
}, true);
// Enter in a line sends it without a change of its field.
document.addEventListener('submit', event => { if (!away()) for (const field of event.target.elements) unsent.delete(field.id); }, true);
document.addEventListener('keydown', event => { if (event.key === 'Enter' && event.target.dataset?.picks && !away()) unsent.delete(event.target.id); }, true);

const until = milliseconds => new Promise(done => setTimeout(done, milliseconds));
let returning = false;
new MutationObserver(async () => {
  if (returning || !['failed', 'rejected', 'resume-failed'].some(state => lost.classList.contains(`components-reconnect-${state}`))) return;
  returning = true;
  while (!await fetch('/mark.svg', { cache: 'no-store' }).then(answer => answer.ok, () => false)) await until(1000);
  const open = [...document.querySelectorAll('main [data-place][aria-expanded=true]')].map(part => part.dataset.place);
  if (unsent.size > 0 || open.length > 0) sessionStorage.setItem(noted, JSON.stringify({ at: location.pathname, open, fields: [...unsent] }));
  location.reload();
}).observe(lost, { attributes: true, attributeFilter: ['class'] });

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
  let answers = false;
  const closed = new Set(back.open);
  new MutationObserver(() => {
    answers ||= !first.isConnected;
    if (!answers) return;
    // What lies in something that was open shows only once that is open again.
    for (const part of document.querySelectorAll('main [data-place][aria-expanded=false]')) if (closed.delete(part.dataset.place)) part.click();
    put();
  }).observe(document.body, { childList: true, subtree: true });
  setTimeout(show, 10000);
}
