// Stands in the head of every page and runs before anything is drawn: which notices the page will put above its first
// words, as far as it can be told at once, so that room is kept for them. A wrong guess only moves the page.
try {
  const page = document.documentElement.dataset;
  const [fragment] = location.hash.slice(1).split(';');
  const [, edition = page.edition] = /[?&]edition=([^&]+)/.exec(fragment) || [];
  const names = Object.keys(localStorage).filter((name) => /^halfnut\/(shelf\/|path$)/.test(name));
  const isKept = names.some((name) => localStorage.getItem(name).includes(fragment));
  const isSeen = sessionStorage.getItem('halfnut/seen-elsewhere');
  const isOurs = history.state?.line;
  const expected = {
    elsewhere: /^\d+\?./.test(fragment) && !isKept && !isSeen,
    remembered: fragment === '' && names.length > 0 && !isOurs,
    older: edition !== page.edition,
    outline: fragment === '' && names.length === 0 && !isOurs,
  };
  page.expects = Object.keys(expected)
    .filter((notice) => expected[notice])
    .join(' ');
} catch {
  // A browser that keeps nothing has nothing to tell.
}
