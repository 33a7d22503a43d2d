/** Pairing codes: 26 characters of Crockford's base 32, typed, pasted or as a whole link. */
export const CODE_LENGTH = 26;
const ALPHABET = /^[0-9A-HJKMNP-TV-Z]+$/;

/** The code within what was typed or pasted, in capitals without groups; O is read as 0, I and L as 1. Null when it is none. */
export function normalizeCode(text: string): string | null {
  const inLink = /[#&?](?:pair|code)=([^&\s]+)/i.exec(text);
  const plain = safeDecode(inLink?.[1] ?? text).toUpperCase().replace(/[\s\p{Pd}._]/gu, '');
  const code = plain.replace(/O/g, '0').replace(/[IL]/g, '1');
  return code.length === CODE_LENGTH && ALPHABET.test(code) ? code : null;
}

function safeDecode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/** In groups of four, as it is shown. */
export const groupCode = (code: string): string => code.replace(/(.{4})(?=.)/g, '$1-');

/** The code of a pairing link that was opened, taken out of the address so that it stays in no history. */
export function takeCodeFromAddress(): string | null {
  const code = /[#&]pair=/i.test(location.hash) ? normalizeCode(location.hash) : null;
  if (location.hash) history.replaceState(null, '', location.pathname + location.search);
  return code;
}
