/** Calls back before the page goes to paper, by the menu, a button or a switch of media; returns how to stop it. */
export function onPrint(act: () => void): () => void {
  const paper = window.matchMedia('print');
  const onMedia = ({ matches }: MediaQueryListEvent): void => {
    if (matches) act();
  };
  window.addEventListener('beforeprint', act);
  paper.addEventListener('change', onMedia);
  return () => {
    window.removeEventListener('beforeprint', act);
    paper.removeEventListener('change', onMedia);
  };
}
