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
