/** A typed number, with a decimal point or a decimal comma; null when it is not one. */
export function parseNumber(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}
