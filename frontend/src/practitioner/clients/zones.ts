/** IANA time zones the browser knows. */
export const spellings = (zone: string): string => zone.replaceAll('_', ' ');

/** All of them, with `known` among them whatever the browser thinks. */
export function zones(known: string): { value: string; label: string }[] {
  const all = new Set([...Intl.supportedValuesOf('timeZone'), 'UTC', known]);
  return [...all].sort().map((value) => ({ value, label: spellings(value) }));
}
