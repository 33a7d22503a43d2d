/** What is asked of a printed sheet, and the words of the request for it. */
import type { Language } from '../../shared/words/mechanism';

export type Paper = 'a4' | 'letter';
export interface Look {
  paper: Paper;
  large: boolean;
  language: Language;
}
export interface ProgramSheet extends Look {
  /** Key of one session; null for all of them. */
  session: string | null;
  /** With a new invitation: a secret that expires. */
  pairing: boolean;
}
export interface Pick {
  exercise: string;
  variant: string;
}

/** As the server has it: more would not be read as one sheet. */
export const PICKS_MAX = 20;

/** Countries that print on US Letter, by CLDR's supplemental data on paper sizes. */
const LETTER_LANDS = new Set(['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE']);

/** The paper that a person with this language tag most likely has: "en-US" prints on Letter, "de-AT" on A4. */
export function paperFor(tag: string): Paper {
  try {
    return LETTER_LANDS.has(new Intl.Locale(tag).region ?? '') ? 'letter' : 'a4';
  } catch {
    return 'a4';
  }
}

/** Method and path of a client's sheet: only the one with a secret writes. */
export function requestOf(client: string, sheet: ProgramSheet): { method: 'GET' | 'POST'; path: string } {
  const query = new URLSearchParams({ paper: sheet.paper, large: String(sheet.large), language: sheet.language });
  if (sheet.session !== null) query.set('session', sheet.session);
  return { method: sheet.pairing ? 'POST' : 'GET', path: `/clients/${encodeURIComponent(client)}/programs/current/sheet.pdf?${query}` };
}
