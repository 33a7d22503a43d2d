import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Role } from '../api/account';
import { me } from '../api/session';
import type { Me } from '../api/types';
import { isOwner, may, mayOpen, mayWrite } from './rights';

const as = (role: Role) => void (me.value = { practitioner: { role } } as Me);

describe('what the person signed in may do', () => {
  beforeEach(() => void (me.value = null));

  it('is nothing but looking before anyone is known', () => {
    expect([may('look'), mayWrite.value, isOwner.value]).toEqual([true, false, false]);
  });

  it.each([['read_only', false, false], ['practitioner', true, false], ['owner', true, true]] as const)('follows the role %s', (role, writes, owns) => {
    as(role);
    expect([may('look'), mayWrite.value, isOwner.value]).toEqual([true, writes, owns]);
  });

  it('opens pages for one deed to who may do it, whatever the query', () => {
    as('read_only');
    expect(['/clients/new', '/exercises/own/new', '/practice/audit?client_id=1'].some(mayOpen)).toBe(false);
    expect(['/', '/clients/1', '/clients/1/edit', '/exercises/step-down', '/practice/records', '/account'].every(mayOpen)).toBe(true);
    as('practitioner');
    expect([mayOpen('/clients/new'), mayOpen('/practice/people')]).toEqual([true, false]);
    as('owner');
    expect(mayOpen('/practice/people')).toBe(true);
  });
});

const SOURCES = join(__dirname, '..');
/** Made of bare elements: the controls themselves, and what is shown to people who are not signed in. */
const THEMSELVES = /^(form|shell)\/|^people\/JoinPage/;
const pages = readdirSync(SOURCES, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.tsx') && !THEMSELVES.test(name));

/** Bare controls, and those of both apps, know nothing of rights. */
const PAST = /<(button|input|select|textarea|form)\b|import .*(shared\/form\/|\bLink\b.*shared\/router)/g;

describe('the pages of the desk', () => {
  it('have only controls that ask for the right to use them', () => {
    const found = pages.flatMap((name) => (readFileSync(join(SOURCES, name), 'utf8').match(PAST) ?? []).map((one) => `${name}: ${one}`));
    expect(pages.length).toBeGreaterThan(100);
    expect(found).toEqual([]);
  });
});
