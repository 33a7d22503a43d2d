import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { fullDate } from '../../shared/dates';
import { ShownDay } from './Shown';

it.each([['2026-06-01', fullDate('2026-06-01')], ['2026-06', '2026-06'], ['', '']])('says the day %s as %s', (value, said) => {
  expect(ShownDay({ label: 'From', value }).props).toEqual({ label: 'From', value: said });
});

it('says a day that may not be changed in one place', () => {
  const desk = join(__dirname, '..');
  const pages = readdirSync(desk, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.tsx'));
  expect(pages.filter((name) => /<Shown\b[^>]*\bfullDate\(/.test(readFileSync(join(desk, name), 'utf8')))).toEqual(['form/Shown.tsx']);
});
