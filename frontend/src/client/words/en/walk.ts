/** The trip in brief, and a walk recorded elsewhere. */
const walk = {
  tripDays: 'Your trip', tripDay: 'Day {n}', tripDayNamed: 'Day {n}: {name}',
  tripUpDown: '{up} up, {down} down', tripHeightsUnknown: 'heights not known',
  walkFile: 'Recorded elsewhere? Take it from a GPX file', walkFileHint: 'It is read on this phone and stays here; only the numbers below are saved.',
  walkFile_read: 'Read. Please look it over, then save.',
  walkFile_too_large: 'This file is larger than any walk (20 MB). Please enter the numbers by hand.',
  walkFile_not_gpx: 'This is not a GPX file that can be read. Please choose another, or enter the numbers by hand.',
  walkFile_nowhere: 'A point in this file lies nowhere on Earth. Please enter the numbers by hand.',
  walkFile_no_way: 'There is no walk in this file: fewer than two points, or too far on foot.',
  walkFile_not_loaded: 'What reads GPX files is not on this phone yet. Please try again with a network; the file is not at fault.',
  walkFile_missed: 'The shared file did not arrive. Please share it again, or choose it here.',
  shareMore: 'A shared walk waits and is not lost. Save what is below first, then find it under Today, or', shareTake: 'let it take the place of these numbers',
  shareWaits: 'A shared walk waits: look it over and save it',
  shareWaitsPair: 'The walk you shared waits on this phone. Once the phone is paired with your practice, the walk opens, ready to be looked over and saved.',
  shareMissedPair: 'The walk you shared did not arrive. Once this phone is paired with your practice, please share it again.',
} as const;
export default walk;
