import { fragmentIn } from '../pasted.ts';

/** Opens a pasted link: whatever stands before its '#' belongs to another address and is left out. */
const form = document.querySelector<HTMLFormElement>('#open-link');
const field = document.querySelector<HTMLInputElement>('#saved-link');
const said = document.querySelector<HTMLElement>('#open-link-said');

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
