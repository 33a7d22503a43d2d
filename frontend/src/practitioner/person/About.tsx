import type { Overview, Ratios } from '../api/types';
import { ButtonLink } from '../form/Button';
import { ratioWords } from '../parts/ratio';
import { c } from '../custody/words';
import { useMay } from '../rights/Needs';
import { isOwner } from '../rights/rights';
import { t } from '../words';

const Line = ({ span, ratios }: { span: string; ratios: Ratios }) => (
  <tr><th scope="row">{span}</th><td>{ratioWords(ratios.by_session)}</td><td>{ratioWords(ratios.by_set)}</td></tr>
);

export function Adherence({ overview }: { overview: Overview }) {
  return (
    <section aria-labelledby="adherence">
      <h2 id="adherence">{t('adherenceTitle')}</h2>
      <table class="plain adherence">
        <thead><tr><th scope="col">{t('adherenceSpan')}</th><th scope="col">{t('adherenceSessions')}</th><th scope="col">{t('adherenceSets')}</th></tr></thead>
        <tbody>
          <Line span={t('adherence7Row')} ratios={overview.adherence_7} />
          <Line span={t('adherence28Row')} ratios={overview.adherence_28} />
        </tbody>
      </table>
    </section>
  );
}

/** What the rules take from the practitioner for this client, and the ways to change it. */
export function About({ overview }: { overview: Overview }) {
  const { id, thresholds, usual_pain, kit, time_zone, note } = overview.client;
  return (
    <section aria-labelledby="about">
      <h2 id="about">{t('aboutTitle')}</h2>
      <ul class="facts">
        <li>{t('aboutPainStop', { value: thresholds.pain_stop })}</li>
        <li>{t('aboutUsual', { value: usual_pain })}</li>
        <li>{t('aboutKit', { kit: kit.map((one) => t(`kit_${one}`)).join(', ') || t('aboutKitNone') })}</li>
        <li>{t('aboutZone', { zone: time_zone })}</li>
        {note && <li>{t('aboutNote', { note })}</li>}
      </ul>
      <p class="screen-only actions"><ButtonLink small to={`/clients/${id}/edit`}>{t(useMay() ? 'editLink' : 'lookLink')}</ButtonLink> <ButtonLink small to={`/clients/${id}/phones`}>{t('phonesLink')}</ButtonLink> <ButtonLink small to={`/practice/audit?client_id=${id}`}>{c('whoSaw')}</ButtonLink> <ButtonLink small to={`/clients/${id}/record`}>{c(isOwner.value ? 'recordLink' : 'exportTitle')}</ButtonLink></p>
    </section>
  );
}
