/** How many drawings are on this phone; what keeps them comes later than the pages that say so. */
import { signal } from '@preact/signals';

export interface Kept {
  count: number;
  /** As they lie on the phone, unpacked. */
  bytes: number;
  /** How many the library has; null while the practice was not reached. */
  of: number | null;
}

export const keptDrawings = signal<Kept | null>(null);
