/**
 * Lengths and masses. Everything is kept in SI (km, m, kg); this file only shows it and reads it back.
 * Rounding, for display alone: kg to 0.5, lb to 1, km and mi to 0.1, ascent to 10 m or 50 ft.
 */
import { signal } from '@preact/signals';
import { parseNumber } from './numbers';
import { localeTag } from './words/mechanism';

export type UnitSystem = 'metric' | 'us';
/** Exact by definition (international yard and pound, 1959). */
export const KM_PER_MILE = 1.609344;
export const M_PER_FOOT = 0.3048;
export const KG_PER_POUND = 0.45359237;

const STORED_AS = 'steadfoot.units';
export const unitSystem = signal<UnitSystem>('metric');

/** Take up the choice kept on this device; without one, US customary for a US region, else metric. */
export function startUnits(): void {
  try {
    const saved = localStorage.getItem(STORED_AS);
    unitSystem.value = saved === 'us' || saved === 'metric' ? saved : navigator.language === 'en-US' ? 'us' : 'metric';
  } catch {
    unitSystem.value = 'metric'; // storage refused
  }
}

export function setUnitSystem(to: UnitSystem): void {
  unitSystem.value = to;
  try {
    localStorage.setItem(STORED_AS, to);
  } catch {
    // storage refused: the choice lasts until the page is closed
  }
}

interface Measure {
  unit: string;
  /** SI for one of the unit. */
  si: number;
  step: number;
}
const MEASURES = {
  distance: { metric: { unit: 'km', si: 1, step: 0.1 }, us: { unit: 'mi', si: KM_PER_MILE, step: 0.1 } },
  height: { metric: { unit: 'm', si: 1, step: 10 }, us: { unit: 'ft', si: M_PER_FOOT, step: 50 } },
  mass: { metric: { unit: 'kg', si: 1, step: 0.5 }, us: { unit: 'lb', si: KG_PER_POUND, step: 1 } },
} as const satisfies Record<string, Record<UnitSystem, Measure>>;
export type Quantity = keyof typeof MEASURES;

const measure = (quantity: Quantity, system: UnitSystem): Measure => MEASURES[quantity][system];

/** SI to a number in the chosen unit, rounded as shown. */
export function toShown(quantity: Quantity, si: number, system: UnitSystem = unitSystem.value): number {
  const { si: one, step } = measure(quantity, system);
  return Number((Math.round(si / one / step) * step).toFixed(2));
}

/** A number in the chosen unit to SI, unrounded: what was typed returns as it was typed. */
export const toSi = (quantity: Quantity, shown: number, system: UnitSystem = unitSystem.value): number =>
  Number((shown * measure(quantity, system).si).toFixed(6));

/** What was typed, in SI; null when it is no number or below zero. */
export function parseQuantity(quantity: Quantity, text: string, system: UnitSystem = unitSystem.value): number | null {
  const typed = parseNumber(text);
  return typed === null || typed < 0 ? null : toSi(quantity, typed, system);
}

export const unitOf = (quantity: Quantity, system: UnitSystem = unitSystem.value): string => measure(quantity, system).unit;

function show(quantity: Quantity, si: number, system: UnitSystem): string {
  return `${new Intl.NumberFormat(localeTag()).format(toShown(quantity, si, system))} ${unitOf(quantity, system)}`;
}

/** "11 km" / "6.8 mi" */
export const distance = (km: number, system: UnitSystem = unitSystem.value) => show('distance', km, system);
/** "520 m" / "1,700 ft" */
export const height = (m: number, system: UnitSystem = unitSystem.value) => show('height', m, system);
/** "6 kg" / "13 lb" */
export const mass = (kg: number, system: UnitSystem = unitSystem.value) => show('mass', kg, system);
