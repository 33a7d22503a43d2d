import { expect, it, vi } from 'vitest';
import type { Client } from '../api/types';
import { differences, emptyForm, fieldsOf, formErrors, formOf } from './fields';
import { secondsLeft } from './Invite';

vi.stubGlobal('navigator', { languages: ['en-GB'] });

const client: Client = {
  id: 'c', display_name: 'Emil Tarrow', birth_year: 1979, sex: 'male', height_cm: 178.5, body_mass_kg: null, time_zone: 'Europe/Vienna', kit: ['step', 'mat'], usual_pain: 1, thresholds: { pain_stop: 6 },
  note: '', created_at: '', archived_at: null, version: 3,
};

it('comes back as it went in', () => {
  expect(fieldsOf(formOf(client))).toEqual({ display_name: 'Emil Tarrow', birth_year: 1979, sex: 'male', height_cm: 178.5, body_mass_kg: null, time_zone: 'Europe/Vienna', kit: ['mat', 'step'], usual_pain: 1, thresholds: { pain_stop: 6 }, note: '' });
});

it('needs a name, and a year that can be one or none', () => {
  const form = emptyForm('UTC');
  expect(Object.keys(formErrors(form, 2026))).toEqual(['display_name']);
  for (const year of ['1899', '2027', '19x', '1970.5']) expect(formErrors({ ...form, display_name: 'A', birth_year: year }, 2026)).toHaveProperty('birth_year');
  expect(formErrors({ ...form, display_name: 'A', birth_year: ' 1970 ' }, 2026)).toEqual({});
  expect(fieldsOf({ ...form, display_name: ' A ' })).toMatchObject({ display_name: 'A', birth_year: null });
});

it('shows where two versions of a client go apart, and only there', () => {
  const mine = { ...formOf(client), note: 'Likes hills', kit: ['mat' as const, 'step' as const] };
  expect(differences({ ...client, birth_year: 1971 }, mine)).toEqual([
    { field: 'birth_year', theirs: '1971', yours: '1979' },
    { field: 'note', theirs: 'nothing', yours: 'Likes hills' },
  ]);
  expect(differences(client, formOf(client))).toEqual([]);
});

it('counts down to the end time, also after the computer slept', () => {
  expect(secondsLeft('2026-11-25T10:10:00Z', new Date('2026-11-25T10:00:00.400Z'))).toBe(600);
  expect(secondsLeft('2026-11-25T10:10:00Z', new Date('2026-11-25T12:00:00Z'))).toBe(0);
});
