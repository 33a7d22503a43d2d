import { t } from '../words';

/** What is odd, missing or approximate in a file, as the server says it; nothing where nothing is. */
export function Remarks({ remarks }: { remarks: readonly string[] }) {
  if (remarks.length === 0) return null;
  return (
    <div class="urgent">
      <p><b>{t('trpRemarks')}</b></p>
      <ul class="facts" lang="en">{remarks.map((one) => <li key={one}>{one}</li>)}</ul>
    </div>
  );
}
