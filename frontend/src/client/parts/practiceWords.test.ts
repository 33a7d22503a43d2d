import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { practice } from '../../outbox';
import type { Practice } from '../../outbox/feed';
import { setLanguage } from '../../shared/words/mechanism';
import { emergencyText, replyTime } from './practiceWords';

vi.mock('../../outbox', () => ({ practice: { value: null } }));
vi.stubGlobal('document', { documentElement: { lang: 'en' } });
const held = practice as { value: Practice | null };
const SERVICE = readFileSync(join(__dirname, '../../../../backend/steadfoot/identity/service.py'), 'utf8');
const given = (name: string): string => new RegExp(`^${name} = "(.+)"$`, 'm').exec(SERVICE)?.[1] ?? '';
const says = (emergency_text: string, reply_time_text: string) => void (held.value = { name: 'Thornwater', practitioner: 'Maren Brandvold', emergency_text, reply_time_text });

afterEach(async () => {
  held.value = null;
  await setLanguage('en');
});

it('says in the language of the phone what every practice is given to begin with', async () => {
  says(given('EMERGENCY_TEXT'), given('_REPLY_TIME_TEXT'));
  expect([emergencyText(), replyTime()]).toEqual(['Call your local emergency number. This app calls nobody.', given('_REPLY_TIME_TEXT')]);
  await setLanguage('de');
  expect(emergencyText()).toBe('Ruf den örtlichen Notruf an. Diese App ruft niemanden an.');
  expect(replyTime()).toMatch(/^Deine Praxis liest das/);
});

it('leaves a practice its own words', async () => {
  says('The number of the valley is on the door.', 'We answer on Tuesdays.');
  await setLanguage('de');
  expect([emergencyText(), replyTime()]).toEqual(['The number of the valley is on the door.', 'We answer on Tuesdays.']);
});
