// The little that markup cannot do: the address follows what is set, and a form that only asks is sent when it changes.

/** Puts what is set into the address, so that a link and a reload show the same. */
export function setAddress(address) {
  history.replaceState(history.state, '', address);
}

document.addEventListener('change', event => {
  const form = event.target.closest?.('form[data-live]');
  if (form?.checkValidity()) form.requestSubmit();
});

document.addEventListener('click', event => {
  if (event.target.closest?.('[data-again]')) {
    event.preventDefault();
    location.reload();
  }
});
