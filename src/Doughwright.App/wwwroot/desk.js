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
