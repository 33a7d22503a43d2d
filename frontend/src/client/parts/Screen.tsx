import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Arrow, MapEdge } from '../../shared/marks/marks';
import { Link } from '../../shared/router';
import { unreadCount } from '../screens/practice/news';
import { t } from '../words';

interface ScreenProps {
  title: string;
  /** The small line above the title: where one is, and what else one should know. */
  where?: ComponentChildren;
  /** Directly under the title: what is saved. */
  under?: ComponentChildren;
  children: ComponentChildren;
  /** Buttons over the bottom edge. */
  foot?: ComponentChildren;
  /** Pages have the row of tabs; a task has a way back instead. */
  tabs?: boolean;
}

let shownBefore = false;

/** A page that comes without a change of address (pairing, waiting, the first program) takes the focus to its heading too. */
function useHeadingFocus() {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const lost = document.activeElement === null || document.activeElement === document.body;
    if (shownBefore && lost) heading.current?.focus({ preventScroll: true });
    shownBefore = true;
  }, []);
  return heading;
}

export function Screen({ title, where, under, children, foot, tabs }: ScreenProps) {
  const heading = useHeadingFocus();
  return (
    <div class="phone">
      <header class="top">
        {where && <div class="where">{where}</div>}
        <h1 ref={heading} tabIndex={-1}>{title}</h1>
        {under}
      </header>
      <main>{children}</main>
      {(foot || tabs) && (
        <footer class="edge">
          <MapEdge />
          {foot}
          {tabs && <Tabs />}
        </footer>
      )}
    </div>
  );
}

const TABS = [['/', 'today'], ['/season', 'season'], ['/practice', 'practice'], ['/me', 'me']] as const;

function Tabs() {
  return (
    <nav class="sheets" aria-label={t('pages')}>
      {TABS.map(([to, word]) => (
        <Link key={to} to={to}>
          <span>
            {t(word)}
            {word === 'practice' && unreadCount.value > 0 && <b class="unread">{t('unreadMessages', { n: unreadCount.value })}</b>}
          </span>
        </Link>
      ))}
    </nav>
  );
}

/** To the left above: where one came from. */
export function BackLink({ to, children }: { to: string; children?: ComponentChildren }) {
  return (
    <Link class="back" to={to}>
      <Arrow to="left" />
      {children ?? t('back')}
    </Link>
  );
}
