import { describe, expect, it } from 'vitest';
import { fieldId, fieldIds, mend, shownBy } from './pointer';
import { circuit, MONDAY, prescription, program } from './testing/arbitrary';

const content = program([circuit('s1', [prescription('p1'), prescription('p2')])], [{ date: MONDAY, session: 's1', fixed_day: false }]);

describe('a mend', () => {
  it('puts a value where its pointer leads, and touches nothing else', () => {
    const mended = mend(content, [{ pointer: '/sessions/0/prescriptions/1/hold_s', value: 30 }, { pointer: '/goal', value: null }, { pointer: '/days', value: [] }]);
    expect(mended).toEqual({ ...content, days: [], sessions: [circuit('s1', [prescription('p1'), { ...prescription('p2'), hold_s: 30 }])] });
    expect((mended.sessions[0] as typeof content.sessions[0] & { prescriptions: unknown[] }).prescriptions[0]).toBe((content.sessions[0] as ReturnType<typeof circuit>).prescriptions[0]);
  });

  it('that leads nowhere changes nothing', () => {
    expect(mend(content, [{ pointer: '/sessions/7/name', value: 'x' }, { pointer: '/__proto__/polluted', value: 1 }, { pointer: '/title/deep', value: 1 }])).toEqual(content);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('a pointer', () => {
  it('names its field and those around it, the nearest first', () => {
    expect(fieldId('/sessions/0/name')).toBe('at-sessions-0-name');
    expect(fieldIds('/sessions/0/name')).toEqual(['at-sessions-0-name', 'at-sessions-0', 'at-sessions']);
  });

  it('says what must be in view', () => {
    expect(shownBy(content, '/sessions/0/prescriptions/1')).toEqual({ session: content.sessions[0], day: null });
    expect(shownBy(content, '/days/0/date')).toEqual({ session: null, day: 0 });
    expect(shownBy(content, '/title')).toEqual({ session: null, day: null });
    expect(shownBy(content, '/days')).toEqual({ session: null, day: null });
  });
});
