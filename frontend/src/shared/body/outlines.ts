/**
 * The two outlines, a person standing at ease, arms a little away. Half a body each; the other half is its mirror.
 * x runs from the middle line outwards, y down; a figure is 200 wide and 474 high.
 */
import type { Aspect, Region } from './places';

export interface Shape {
  region: Region;
  /** Only where the region is seen from both sides and the side matters. */
  aspect?: Aspect;
  d: string;
}
const KNEE = 'M14 304C24 301 35 301 45 304C44 311 46 318 45 325C44 331 43 336 43 341C34 344 24 344 17 341C15 334 14 328 14 321C14 315 15 310 14 304Z';
const ARM: Shape[] = [
  { region: 'upper_arm', d: 'M68 113C71 124 74 135 76 148C70 152 61 153 55 151C52 139 47 127 43 117C51 116 60 115 68 113Z' },
  { region: 'elbow', d: 'M76 148C78 156 80 164 82 172C76 176 67 178 61 176C58 168 57 160 55 151C61 153 70 152 76 148Z' },
  { region: 'forearm', d: 'M82 172C87 186 90 202 92 218C87 221 82 222 77 222C72 208 66 192 61 176C67 178 76 176 82 172Z' },
  { region: 'hand', d: 'M77 222C82 222 87 221 92 218C97 225 99 236 98 246C97 256 94 266 89 267C84 267 82 258 80 248C78 252 76 252 74 249C73 241 73 231 77 222Z' },
];
const SHOULDER = 'M36 78C47 80 59 84 65 96C67 102 68 108 68 113C60 115 51 116 43 117C38 104 36 92 36 78Z';
const ANKLE = 'M22 424C27 422 32 422 37 424C36 431 38 436 40 442C33 445 26 445 20 442C21 436 23 431 22 424Z';

/** On the middle line; drawn once, whole. */
export const MIDDLE: Record<'front' | 'back', Shape[]> = {
  front: [
    { region: 'head', d: 'M0 5C14 5 22 16 21 31C20 46 12 58 0 58C-12 58-20 46-21 31C-22 16-14 5 0 5Z' },
    { region: 'neck', d: 'M-13 51C-9 56-4 58 0 58C4 58 9 56 13 51C12 60 14 67 20 72C8 76-8 76-20 72C-14 67-12 60-13 51Z' },
    { region: 'chest', d: 'M-20 72C-8 76 8 76 20 72C26 75 31 77 36 78C36 92 38 104 43 117C42 122 40 127 39 132C14 140-14 140-39 132C-40 127-42 122-43 117C-38 104-36 92-36 78C-31 77-26 75-20 72Z' },
    { region: 'abdomen', d: 'M-39 132C-14 140 14 140 39 132C36 146 34 158 36 170C38 178 41 184 43 191C34 200 18 208 0 209C-18 208-34 200-43 191C-41 184-38 178-36 170C-34 158-36 146-39 132Z' },
  ],
  back: [
    { region: 'head', d: 'M0 5C14 5 22 16 21 31C20 42 17 49 13 53C5 57-5 57-13 53C-17 49-20 42-21 31C-22 16-14 5 0 5Z' },
    { region: 'neck', d: 'M-13 53C-5 57 5 57 13 53C12 61 14 67 20 72C8 78-8 78-20 72C-14 67-12 61-13 53Z' },
    { region: 'upper_back', d: 'M-20 72C-8 78 8 78 20 72C26 75 31 77 36 78C36 92 38 104 43 117C42 122 40 127 39 132C14 138-14 138-39 132C-40 127-42 122-43 117C-38 104-36 92-36 78C-31 77-26 75-20 72Z' },
    { region: 'lower_back', d: 'M-39 132C-14 138 14 138 39 132C36 146 34 158 36 170C38 176 40 181 42 187C28 181 12 182 0 188C-12 182-28 181-42 187C-40 181-38 176-36 170C-34 158-36 146-39 132Z' },
  ],
};

/** One half; drawn on both sides. */
export const HALF: Record<'front' | 'back', Shape[]> = {
  front: [
    { region: 'shoulder', d: SHOULDER },
    ...ARM,
    { region: 'hip', d: 'M24 203C31 199 38 196 43 191C48 204 51 219 52 234C42 237 32 238 23 237C24 225 24 214 24 203Z' },
    { region: 'groin', d: 'M0 209C9 208 17 206 24 203C24 214 24 225 23 237C16 236 9 232 3 226L0 222Z' },
    { region: 'thigh', aspect: 'front', d: 'M3 226C9 232 16 236 23 237C32 238 42 237 52 234C53 258 49 282 45 304C35 301 24 301 14 304C12 280 7 252 3 226Z' },
    { region: 'knee', aspect: 'front', d: KNEE },
    { region: 'shin', d: 'M17 341C24 344 34 344 43 341C48 357 47 376 42 394C39 405 38 415 37 424C32 422 27 422 22 424C22 412 20 399 17 386C14 370 14 355 17 341Z' },
    { region: 'ankle', d: ANKLE },
    { region: 'foot', d: 'M20 442C26 445 33 445 40 442C47 448 55 454 58 460C59 467 55 470 49 470L25 470C19 470 18 464 18 457C18 451 19 446 20 442Z' },
  ],
  back: [
    { region: 'shoulder', d: SHOULDER },
    ...ARM,
    { region: 'buttock', d: 'M0 188C12 182 28 181 42 187C48 202 51 219 52 236C40 247 19 249 4 240C1 235 0 229 0 222Z' },
    { region: 'thigh', aspect: 'back', d: 'M4 240C19 249 40 247 52 236C53 259 49 282 45 304C35 301 24 301 14 304C12 283 8 261 4 240Z' },
    { region: 'knee', aspect: 'back', d: KNEE },
    { region: 'calf', d: 'M17 341C24 344 34 344 43 341C51 358 49 378 42 396C35 400 27 400 21 397C13 378 12 357 17 341Z' },
    { region: 'achilles', d: 'M21 397C27 400 35 400 42 396C39 406 38 415 37 424C32 422 27 422 22 424C22 415 22 406 21 397Z' },
    { region: 'ankle', d: ANKLE },
    { region: 'foot', d: 'M20 442C26 445 33 445 40 442C45 449 47 457 44 464C42 470 37 470 32 470L26 470C20 470 18 465 18 458C18 452 19 447 20 442Z' },
  ],
};
