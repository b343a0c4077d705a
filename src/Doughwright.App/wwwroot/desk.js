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
