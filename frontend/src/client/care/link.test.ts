import { describe, expect, it } from 'vitest';
import { circuit, entry, prescription, version } from '../testing/sample';
import { wholePlan, type Planned } from '../session/plan';
import { linkOf, linkOfEvent, movementsOf, NO_MOVEMENT } from './link';

const planned = wholePlan([version(3)], new Map())[0] as Planned;
const about = { planned_id: '2026-10-05.1', program_version: 3 };

describe('the movement that a pain report is about', () => {
  it('is one of the session, each once, the one just done first', () => {
    expect(movementsOf(planned).map((one) => one.key)).toEqual(['p1', 'p2']);
    expect(movementsOf(planned, 'p2').map((one) => one.key)).toEqual(['p2', 'p1']);
    expect(movementsOf(planned, 'gone').map((one) => one.key)).toEqual(['p1', 'p2']);
  });
  it('is named with the variant that was really done', () => {
    expect(linkOf(planned, 'p1', {})).toEqual({ ...about, prescription: 'p1', exercise: 'step-down', variant: 'step-15' });
    expect(linkOf(planned, 'p1', { p1: 'step-10' })).toMatchObject({ variant: 'step-10' });
  });
  it('is not named when nobody named one: then nothing can be made easier by mistake', () => {
    expect(linkOf(planned, NO_MOVEMENT, {})).toEqual(about);
    expect(linkOf(planned, 'gone', {})).toEqual(about);
    expect(linkOf(null, 'p1', {})).toEqual({});
  });
  it('stays the same in the answer of the next morning', () => {
    const link = linkOf(planned, 'p2', {});
    const report = entry('pain_reported', '2026-10-05T18:00', { rating: 4, region: 'knee', side: 'left', when: 'during', ...link });
    expect(linkOfEvent(report)).toEqual(link);
    expect(linkOfEvent(entry('pain_reported', '2026-10-05T18:00', { rating: 4, ...about }))).toEqual(about);
  });
  it('is asked only where there are movements', () => {
    expect(movementsOf({ ...planned, session: { ...circuit, prescriptions: [prescription('only')] } as never })).toHaveLength(1);
    expect(movementsOf({ ...planned, session: { key: 's', kind: 'rest', name: 'Rest', note: '' } })).toEqual([]);
  });
});
