import { useEffect, useRef } from 'preact/hooks';
import { dayShort } from '../../shared/dates';
import type { Action, Decided, Flag } from '../api/types';
import { t } from '../words';
import { AnswerForm } from './AnswerForm';
import { decisionWords, shortCitation } from './answers';

const KINDS = { published: 'rulePublished', derived: 'ruleDerived', house: 'ruleHouse' } as const;
/** Entries shown at once; of more, the newest stand and the earlier ones are folded. */
const EVIDENCE_MAX = 3;
const EVIDENCE_NEWEST = 2;

function RuleLine({ flag }: { flag: Flag }) {
  const { authors, year, title } = flag.source;
  return (
    <div class="rule note soft">
      {t('openSince', { date: dayShort(flag.since) })} {t('ruleLine')} <i>{t(`rule_${flag.rule}`)}</i>, {t(KINDS[flag.kind])}{flag.kind === 'house' ? '.' : ': '}
      {flag.kind !== 'house' && <details><summary>{shortCitation(flag.source)}</summary><p>{authors} {year}, <cite lang="en">{title}</cite>.</p></details>}
    </div>
  );
}

const Entries = ({ of }: { of: Flag['evidence'] }) => (
  <ul class="evidence" lang="en">{of.map(({ event_id, sentence }) => <li key={event_id}>{sentence}</li>)}</ul>
);

/** The newest entries that show it, and the earlier ones on demand. */
function Evidence({ evidence }: Flag) {
  const earlier = evidence.length > EVIDENCE_MAX ? evidence.slice(0, -EVIDENCE_NEWEST) : [];
  return (
    <>
      {earlier.length > 0 && <details class="earlier-evidence"><summary>{t('evidenceEarlier', { n: earlier.length })}</summary><Entries of={earlier} /></details>}
      <Entries of={evidence.slice(earlier.length)} />
    </>
  );
}

interface FlagCardProps {
  flag: Flag;
  /** It was asked for by its address: it takes the focus. */
  wanted: boolean;
  onDecided: (decided: Decided, action: Action) => void;
}

/** One finding: what shows it, where the rule comes from, what could be done, and the answers. The server's sentences are English. */
export function FlagCard({ flag, wanted, onDecided }: FlagCardProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!wanted) return;
    heading.current?.focus();
    heading.current?.scrollIntoView({ block: 'start' });
  }, [wanted]);
  return (
    <section class="flag" id={`flag-${flag.id}`} aria-labelledby={`title-${flag.id}`}>
      <h3 id={`title-${flag.id}`} tabIndex={-1} ref={heading} lang="en">{flag.title}</h3>
      {flag.status === 'acknowledged' && <p class="note">{t('watching')}</p>}
      <Evidence {...flag} />
      <RuleLine flag={flag} />
      {flag.decisions.map((decision) => <p class="note" key={decision.decided_at}>{decisionWords(decision)}</p>)}
      <AnswerForm flag={flag} onDecided={onDecided} />
    </section>
  );
}
