import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { dayAndMonth, dayName, time, today } from '../../shared/dates';
import { MapEdge } from '../../shared/marks/marks';
import { Link, path } from '../../shared/router';
import { me } from '../api/session';
import { mayWrite } from '../rights/rights';
import { StatusLine } from '../parts/status';
import { t } from '../words';
import { Menu } from './Menu';

function Now({ zone }: { zone: string }) {
  const [now, setNow] = useState(new Date());
  useEffect(() => {
    const ticking = setInterval(() => setNow(new Date()), 20_000);
    return () => clearInterval(ticking);
  }, []);
  const day = today(now, zone);
  return <span class="clock soft tnum">{dayName(day, 'long')} {dayAndMonth(day)}, {time(now, zone)}</span>;
}

/** Where the main pages begin; a page below one of them belongs to it. */
function isUnder(at: string, place: string): boolean {
  return place === '/' ? at === '/' || /^\/clients\/./.test(at) : at === place || at.startsWith(`${place}/`);
}

function Nav() {
  const pages = [['/', t('caseload')], ['/exercises', t('exercisesNav')], ['/templates', t('templatesNav')], ['/clients', t('clientsNav')]] as const;
  return (
    <nav aria-label={t('mainMenu')}>
      {pages.map(([to, label]) => (
        <Link key={to} to={to} class={isUnder(path.value, to) && !(to === '/clients' && path.value !== '/clients') ? 'here' : ''}>{label}</Link>
      ))}
    </nav>
  );
}

function skip(event: Event): void {
  event.preventDefault();
  const heading = document.querySelector<HTMLElement>('main h1');
  if (!heading) return;
  heading.tabIndex = -1;
  heading.focus();
}

/** The frame around every page of someone signed in. */
export function Shell({ children }: { children: ComponentChildren }) {
  const practice = me.value?.practice;
  return (
    <div class="shell">
      <a class="skip" href="#content" onClick={skip}>{t('skipToContent')}</a>
      <header class="bar">
        <b>{practice?.name}</b>
        {!me.value?.must_set_up_second_factor && <Nav />}
        <span class="spacer" />
        {practice && <Now zone={practice.time_zone} />}
        <Menu />
      </header>
      <MapEdge />
      <StatusLine />
      {!mayWrite.value && !me.value?.must_set_up_second_factor && path.value !== '/account' && <aside class="read-only soft note" aria-label={t('role_read_only')}><p>{t('accReadOnly')}</p></aside>}
      <div id="content">{children}</div>
      <footer class="foot-line soft note"><p>{t('emergencyNote')}</p><p><Link to="/sources">{t('sourcesTitle')}</Link></p></footer>
    </div>
  );
}
