/** Opens a pasted link: whatever stands before its '#' belongs to another address and is left out. */
const form = document.querySelector<HTMLFormElement>('#open-link');
const field = document.querySelector<HTMLInputElement>('#saved-link');
const said = document.querySelector<HTMLElement>('#open-link-said');

/** The path in a pasted text, without '#'; undefined where there is none. */
function fragmentIn(text: string): string | undefined {
  const written = text.trim();
  const fragment = written.includes('#') ? written.slice(written.indexOf('#') + 1) : written;
  return /^\d+\?\S*=/.test(fragment) ? fragment : undefined;
}

if (form && field && said) {
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const fragment = fragmentIn(field.value);
    if (fragment === undefined) {
      said.textContent =
        'This is no link to a path. One ends with #, a number, a question mark and the answers: #1?size=medium … Copy the whole address.';
      field.setAttribute('aria-invalid', 'true');
      field.focus();
    } else {
      window.location.href = `${form.dataset.plan}#${fragment}`;
    }
  });
}

export {};
