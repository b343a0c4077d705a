// What a person types stays theirs, however late the desk answers, and reaches it however they leave.

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
document.addEventListener('input', event => {
  const field = event.target;
  if (!field.matches?.('.writepage input[type=text], .writepage textarea') || Object.hasOwn(field, 'value')) return;
  Object.defineProperty(field, 'value', { configurable: true, get: () => native(field).get.call(field), set: () => {} });
  if (field.dataset.picks && field.localName === 'input') answered.observe(field, { attributeFilter: ['data-answer'] });
}, true);
for (const kind of ['change', 'focusout']) {
  document.addEventListener(kind, event => {
    // What is sent while the hand rests in its field is typed on; a field that lines are typed into is told what stays in it.
    if (event.target.dataset?.picks && event.target.localName === 'input') return;
    if (event.target.matches?.('.writepage :is(input, textarea)') && !(event.type === 'change' && !event.isTrusted && event.target === resting?.field)) delete event.target.value;
  }, true);
}

// What was typed and rests for a moment is sent before its field is left: the page shows what follows from it, and the book has it. What is only begun is not: a field that is empty, a bracket or
// a list that is open.
let resting = null;
const send = () => {
  const { field, timer } = resting;
  clearTimeout(timer);
  const isWhole = field.isConnected && field.value.trim() !== '' && field.dataset.picks !== 'open' && field.value.lastIndexOf('[') <= field.value.lastIndexOf(']');
  if (isWhole) field.dispatchEvent(new Event('change', { bubbles: true }));
  resting = null;
};
document.addEventListener('input', event => {
  if (!event.target.matches?.('.writepage :is(input.cell, .sentence input:not(.worded), .stepedit > .fields input[type=text], textarea)')) return;
  clearTimeout(resting?.timer);
  resting = { field: event.target, timer: setTimeout(send, 700) };
});
for (const kind of ['change', 'focusout']) {
  document.addEventListener(kind, event => {
    if (event.target !== resting?.field) return;
    if (event.type === 'focusout') send();
    else if (event.isTrusted) {
      clearTimeout(resting.timer);
      resting = null;
    }
  });
}
document.addEventListener('visibilitychange', () => { if (document.visibilityState === 'hidden' && resting) send(); });

// Lines that Enter has sent, or will: one is under way at a time, those typed before its answer wait in the field behind it. What the answer leaves of the line stays in the field, before what was
// typed since: nothing of one that was taken, and then the next goes.
const sent = new WeakMap();
const fill = (field, text) => {
  native(field).set.call(field, text);
  field.dispatchEvent(new Event('input', { bubbles: true }));
};
const answered = new MutationObserver(changes => {
  for (const { target: field } of changes) {
    const [, deed, left] = /^\d+ (taken|kept|instead) ?(.*)$/s.exec(field.dataset.answer);
    const [line = field.value, ...next] = sent.get(field) ?? [];
    sent.delete(field);
    if (deed === 'kept' || !Object.hasOwn(field, 'value') || !field.value.startsWith(line)) continue;
    const after = field.value.slice(line.length);
    if (deed === 'taken' && next.length > 0) {
      fill(field, next[0]);
      field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
      sent.set(field, next);
      fill(field, after);
    } else if (after !== '') fill(field, left + after);
    else native(field).set.call(field, left);
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
  } else sent.set(field, [field.value]);
}, true);

// What is pasted as several lines stays several: each goes in as if it had been typed by itself.
document.addEventListener('paste', event => {
  const field = event.target;
  const lines = (event.clipboardData?.getData('text') ?? '').split(/\r?\n/).map(line => line.trim()).filter(line => line !== '');
  if (!field.dataset?.picks || field.localName !== 'input' || lines.length < 2) return;
  event.preventDefault();
  document.execCommand('insertText', false, lines.join(' ⏎ '));
});
