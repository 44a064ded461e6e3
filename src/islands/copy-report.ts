/** Puts the link of the path into the text of a report and copies it on request. */
const text = document.querySelector<HTMLTextAreaElement>('#report');
const button = document.querySelector<HTMLButtonElement>('#copy-report');
const said = document.querySelector('#copy-said');

if (text && button && said) {
  if (window.location.hash)
    text.value += new URL(`../questions/${window.location.hash}`, window.location.href).href;
  button.hidden = false;
  button.addEventListener('click', async () => {
    text.select();
    try {
      await navigator.clipboard.writeText(text.value);
      said.textContent = 'Copied.';
    } catch {
      said.textContent = 'This browser does not let us copy. The text is selected: copy it by hand.';
    }
  });
}
