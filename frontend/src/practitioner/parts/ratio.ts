import type { Ratio } from '../api/types';
import { t } from '../words';

/** "9 of 12", or as long as something is not heard "9 of 12; 9 to 12 until heard": never one number that pretends to know. */
export function ratioWords({ prescribed, done, low, high }: Ratio): string {
  if (prescribed === 0 || low === null || high === null) return t('ratioNone');
  const [least, most] = [Math.round(low * prescribed), Math.round(high * prescribed)];
  if (least === most) return t('ratioExact', { done, prescribed });
  return t('ratioRange', { done, prescribed, low: least, high: most });
}
