// Stands in the head of every page and runs before anything is drawn: the colours chosen on this device.
try {
  const colours = localStorage.getItem('halfnut/colours');
  if (colours === 'light' || colours === 'dark') document.documentElement.dataset.theme = colours;
} catch {
  // A browser that keeps nothing shows the colours of the system.
}
