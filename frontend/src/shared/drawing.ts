interface Named {
  code: string;
  own?: { drawing: string } | null | undefined;
}
/** What a movement is called in the address of its drawings: a practice's own has a key that nobody can guess. */
export const drawnAs = ({ code, own }: Named): string => own?.drawing ?? code;

/** Where the drawing of a movement's variant is. It holds nothing personal: an image element asks for it without a token. */
export const drawingUrl = (exercise: string, variant: string, form: 'moving' | 'still'): string =>
  `/api/v1/exercises/${encodeURIComponent(exercise)}/figure.svg?variant=${encodeURIComponent(variant)}&form=${form}`;

/** Whether it is of a practice's own movement: no list names those, and a new version has another address. */
export const isOwnDrawing = (address: string): boolean => address.startsWith('/api/v1/exercises/own-');
