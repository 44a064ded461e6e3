const two = (n: number): string => String(n).padStart(2, '0');

/** Today by the clock of this device, ISO 8601. */
export function today(): string {
  const now = new Date();
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
