import type { Kit } from '../../parts/Later';

/** Hands the person a file; nothing leaves the phone by itself. */
export function hand(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

export async function saveOwn({ exportText, day }: Kit): Promise<void> {
  hand(new Blob([await exportText()], { type: 'application/json' }), `steadfoot-${day.value}.json`);
}
