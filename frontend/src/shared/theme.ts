/** Light, dark, or as the device says; kept on this device. */
import { signal } from '@preact/signals';

export type Theme = 'system' | 'light' | 'dark';
const STORED_AS = 'steadfoot.theme';
export const theme = signal<Theme>('system');

function show(to: Theme): void {
  theme.value = to;
  if (to === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = to;
}

export function startTheme(): void {
  try {
    const saved = localStorage.getItem(STORED_AS);
    show(saved === 'light' || saved === 'dark' ? saved : 'system');
  } catch {
    show('system'); // storage refused: as the device says
  }
}

export function setTheme(to: Theme): void {
  show(to);
  try {
    localStorage.setItem(STORED_AS, to);
  } catch {
    // storage refused: the choice lasts until the page is closed
  }
}
