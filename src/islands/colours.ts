/** The switch for light and dark. It stands by itself, so that pages to be read load nothing else. */
const KEY = 'halfnut/colours';
const page = document.documentElement;
const choices = [...document.querySelectorAll<HTMLInputElement>('input[name="colours"]')];

function show(colours: string): void {
  if (colours === 'light' || colours === 'dark') page.dataset.theme = colours;
  else delete page.dataset.theme;
  for (const choice of choices) choice.checked = choice.value === (page.dataset.theme ?? 'system');
}

function choose(colours: string): void {
  show(colours);
  try {
    localStorage.setItem(KEY, colours);
  } catch {
    // The choice then holds for this page only.
  }
}

show(page.dataset.theme ?? 'system');
for (const choice of choices) choice.addEventListener('change', () => choose(choice.value));
window.addEventListener('storage', ({ key, newValue }) => {
  if (key === KEY) show(newValue ?? 'system');
});

export {};
