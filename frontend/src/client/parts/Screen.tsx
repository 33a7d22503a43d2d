import type { ComponentChildren } from 'preact';
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

export function Screen({ title, where, under, children, foot, tabs }: ScreenProps) {
  return (
    <div class="phone">
      <header class="top">
        {where && <div class="where">{where}</div>}
        <h1>{title}</h1>
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

/** A small page with a sentence or two and nothing to do. */
export function Quiet({ children }: { children: ComponentChildren }) {
  return <div class="quiet">{children}</div>;
}
