import { useEffect, useRef } from 'preact/hooks';
import { t } from '../words';

/** What a form asks to be changed, by the field's `name`; it takes the focus when it appears, each line leads to its field. */
export type FieldErrors = Partial<Record<string, string>>;

function goTo(name: string): void {
  const field = document.getElementsByName(name)[0];
  field?.focus();
  field?.scrollIntoView({ block: 'center' });
}

/** `attempt` counts the tries: at each new one with errors the summary takes the focus. */
export function ErrorSummary({ errors, attempt }: { errors: FieldErrors; attempt: number }) {
  const element = useRef<HTMLDivElement>(null);
  const found = Object.entries(errors).filter((entry): entry is [string, string] => Boolean(entry[1]));
  useEffect(() => {
    if (attempt > 0 && found.length > 0) element.current?.focus();
  }, [attempt]);
  if (found.length === 0) return null;
  return (
    <div class="summary" ref={element} tabIndex={-1} role="alert">
      <h2>{t('summaryTitle', { n: found.length })}</h2>
      <ul>
        {found.map(([name, text]) => (
          <li key={name}>
            <a href={`#${name}`} onClick={(event) => { event.preventDefault(); goTo(name); }}>{text}</a>
          </li>
        ))}
      </ul>
    </div>
  );
}
